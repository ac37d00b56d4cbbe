import fc from 'fast-check';

// Every run tries the same made-up inputs, so that a failure is found again; EXAMPLES=7 npm run vitest tries others.
fc.configureGlobal({ seed: Number(process.env.EXAMPLES ?? 1) });
