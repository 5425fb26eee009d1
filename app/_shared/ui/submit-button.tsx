'use client';
/** <SubmitButton tone? pendingText? name? value? formAction?>: cannot be sent twice, says so while it is on its way. */
import type { ComponentProps } from 'react';
import { useFormStatus } from 'react-dom';
import { type ButtonTone, buttonClass } from './button';

interface Props extends Omit<ComponentProps<'button'>, 'type' | 'className'> {
  readonly tone?: ButtonTone;
  readonly pendingText?: string;
}

export function SubmitButton({ tone = 'primary', pendingText = 'Saving…', children, ...rest }: Props) {
  const { pending, data } = useFormStatus();
  const mine = rest.name === undefined || data?.get(rest.name) === rest.value;
  return (
    <button
      {...rest}
      type="submit"
      className={buttonClass(tone)}
      aria-disabled={pending}
      onClick={pending ? hold : rest.onClick}
    >
      {pending && mine ? pendingText : children}
    </button>
  );
}

function hold(event: { preventDefault: () => void }) {
  event.preventDefault();
}
