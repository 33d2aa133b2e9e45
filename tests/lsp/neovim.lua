-- Asks the server what tests/lsp/neovim.test.ts expects of it, and writes the answers as JSON.
local PATIENCE = 15000

local function main()
  vim.cmd("edit plan.drill")
  local published
  local id = vim.lsp.start_client({
    name = "drillwright",
    cmd = { vim.env.DRILLWRIGHT_NODE, vim.env.DRILLWRIGHT_PROGRAM, "lsp", "--stdio" },
    root_dir = vim.fn.getcwd(),
    workspace_folders = { { uri = vim.uri_from_fname(vim.fn.getcwd()), name = "practice" } },
    get_language_id = function() return "drillwright" end,
    handlers = {
      ["textDocument/publishDiagnostics"] = function(_, result)
        if result.uri == vim.uri_from_bufnr(0) and #result.diagnostics > 0 then published = result.diagnostics end
      end,
    },
  })
  vim.lsp.buf_attach_client(0, id)
  if not vim.wait(PATIENCE, function() return published ~= nil end, 50) then error("No mistakes were published.") end

  local document = { uri = vim.uri_from_bufnr(0) }
  local function ask(method, params)
    local answers, problem = vim.lsp.buf_request_sync(0, method, params, PATIENCE)
    local answer = answers and answers[id]
    if not answer or answer.error then
      error(method .. ": " .. vim.inspect(problem or (answer and answer.error)))
    end
    return answer.result
  end
  local function at(line, character)
    return { textDocument = document, position = { line = line, character = character } }
  end
  local seen = { diagnostics = {}, completions = {}, renamed = {} }
  for _, each in ipairs(published) do table.insert(seen.diagnostics, each.message) end

  local list = ask("textDocument/completion", at(5, 11))
  for _, item in ipairs(list.items or list) do table.insert(seen.completions, item.label) end
  seen.hover = ask("textDocument/hover", at(5, 14)).contents.value

  local rename = at(0, 7)
  rename.newName = "Narrow gate"
  local edit = ask("textDocument/rename", rename)
  for uri in pairs(edit.changes or {}) do table.insert(seen.renamed, vim.fn.fnamemodify(vim.uri_to_fname(uri), ":t")) end
  for _, change in ipairs(edit.documentChanges or {}) do
    table.insert(seen.renamed, vim.fn.fnamemodify(vim.uri_to_fname(change.textDocument.uri), ":t"))
  end
  table.sort(seen.renamed)

  local layout = { textDocument = document, options = { tabSize = 2, insertSpaces = true } }
  vim.lsp.util.apply_text_edits(ask("textDocument/formatting", layout), 0, vim.lsp.get_client_by_id(id).offset_encoding)
  seen.formatted = table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, false), "\n")
  return seen
end

local succeeded, answer = pcall(main)
io.stdout:write(succeeded and vim.fn.json_encode(answer) or tostring(answer))
io.stdout:flush()
vim.cmd(succeeded and "qall!" or "cquit")
