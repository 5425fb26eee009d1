/**
 * <Button tone="primary" | "quiet">          a plain button (type="button" unless said otherwise)
 * <ButtonLink href tone>                     a link that looks like one: for going somewhere, never for changing things
 * <SubmitButton pendingText="Saving" …>      in submit-button.tsx: says what it is doing while the form is on its way
 * One primary per panel. Heights follow --target: 44 px, 72 px inside .bench.
 */
import type { Route } from 'next';
import Link from 'next/link';
import type { ComponentProps } from 'react';
import styles from './button.module.css';

export type ButtonTone = 'primary' | 'quiet';

export function buttonClass(tone: ButtonTone): string {
  return `${styles.button} ${tone === 'primary' ? styles.primary : styles.quiet}`;
}

export function Button({
  tone = 'quiet',
  type = 'button',
  ...rest
}: ComponentProps<'button'> & { tone?: ButtonTone }) {
  return <button {...rest} type={type} className={buttonClass(tone)} />;
}

interface ButtonLinkProps extends Omit<ComponentProps<'a'>, 'href' | 'className'> {
  readonly href: string;
  readonly tone?: ButtonTone;
}

export function ButtonLink({ tone = 'quiet', href, ...rest }: ButtonLinkProps) {
  return <Link {...rest} href={href as Route} className={buttonClass(tone)} />;
}
