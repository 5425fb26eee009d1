import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';
import { shellState } from '@/app/_server/shell-state';
import { Shell } from './_shared/shell/shell';
import './globals.css';

export const dynamic = 'force-dynamic';

export const metadata: Metadata = {
  title: { default: 'Edgekeep', template: '%s · Edgekeep' },
  description: 'What each blade and die has left, and what the coming jobs need.',
  applicationName: 'Edgekeep',
  manifest: '/manifest.webmanifest',
  formatDetection: { telephone: false, date: false, address: false, email: false },
};

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#fafbfa' },
    { media: '(prefers-color-scheme: dark)', color: '#151d24' },
  ],
};

export default async function RootLayout({ children }: { readonly children: ReactNode }) {
  const state = await shellState();
  return (
    <html lang="en-GB" data-theme={state.theme}>
      <body>
        <Shell {...state}>{children}</Shell>
      </body>
    </html>
  );
}
