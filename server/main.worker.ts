/** Entry of the server in a browser: a worker, whose messages are the connection. */
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { serve } from './lsp/serve.ts';

// Declared here, since the compiler's worker library would put every browser name in reach of the server's pure code.
declare const self: ConstructorParameters<typeof BrowserMessageReader>[0];

serve(createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self)));
