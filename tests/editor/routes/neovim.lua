-- Neovim's own language client over stdio: nothing of VS Code may be needed to be of use. Runs on 0.7, which has no `nvim -l`.
local lsp, file = vim.lsp, vim.api.nvim_buf_get_name(0)
local LIMIT_MS = 300000 -- a machine that is busy with other things is slow
local function say(text) io.stdout:write(text .. '\n') end
local function line_of(text)
  for at, line in ipairs(vim.api.nvim_buf_get_lines(0, 0, -1, false)) do
    if line:find(text, 1, true) then return at - 1, line:find(text, 1, true) - 1 end
  end
  error('no line has ' .. text)
end
local function found(line) return #vim.diagnostic.get(0, { lnum = line }) > 0 end
local function ask(id, method, params) return lsp.buf_request_sync(0, method, params, LIMIT_MS)[id].result end

local function check()
  vim.bo.filetype = 'tappet'
  local id = assert(lsp.start_client({ name = 'tappet', cmd = { vim.env.NODE, vim.env.SERVER, '--stdio' }, root_dir = vim.fn.fnamemodify(file, ':h') }))
  lsp.buf_attach_client(0, id)
  local wrong = line_of('initial          9 F')
  assert(vim.wait(LIMIT_MS, function() return found(wrong) end, 20), 'nothing found')
  say('[suite]   ok shows a finding')

  local line, column = line_of('mechanical')
  vim.api.nvim_win_set_cursor(0, { line + 1, column + 1 })
  local position = lsp.util.make_position_params()
  local hover = ask(id, 'textDocument/hover', position)
  assert(vim.inspect(hover):lower():find('total'), 'no total in ' .. vim.inspect(hover))
  say('[suite]   ok hovers a total')

  local folds = ask(id, 'textDocument/foldingRange', { textDocument = position.textDocument })
  local head, folded = line_of('session 2026-05-02'), false
  for _, fold in ipairs(folds) do folded = folded or fold.startLine == head end
  assert(folded, 'no fold at the session')
  say('[suite]   ok folds a session')

  vim.api.nvim_buf_set_lines(0, wrong, wrong + 1, false, { '  initial          9 deg' })
  assert(vim.wait(LIMIT_MS, function() return not found(wrong) end, 20), 'the finding stays')
  say('[suite]   ok drops the finding after an edit')
end

local ok, problem = pcall(check)
if not ok then say('[suite]   FAILED ' .. tostring(problem)) end
say(ok and '[suite] 4 passed, 0 failed' or '[suite] 0 passed, 1 failed')
vim.cmd(ok and 'qall!' or 'cquit 1')
