namespace TieRodCalc.Cli.Rendering;

/// <summary>
/// The scripts by which shells complete: each gives the program the words of the line and offers what it answers. How they ask is
/// told at <see cref="Commands.ShellCompletion"/>.
/// </summary>
internal static class CompletionScripts
{
    public const string Bash =
        """
        # Completion of tierodcalc for bash. Load it by: source <(tierodcalc completion bash)
        _tierodcalc() {
          local program=${1/#\~\//$HOME/} kind='' word
          COMPREPLY=()
          {
            IFS= read -r kind
            while IFS= read -r word; do COMPREPLY+=("$word"); done
          } < <("$program" '[complete:bash]' "${COMP_LINE:0:COMP_POINT}" "${COMP_LINE:COMP_POINT}" "$COMP_WORDBREAKS" \
            2>/dev/null </dev/null)
          # Where a word is asked for and none fits, files would mislead.
          [[ $kind != words ]] || compopt +o default +o bashdefault 2>/dev/null
          return 0
        }
        complete -o bashdefault -o default -F _tierodcalc tierodcalc

        """;

    public const string Zsh =
        """
        #compdef tierodcalc
        # Completion of tierodcalc for zsh. Load it after compinit by: source <(tierodcalc completion zsh)
        _tierodcalc() {
          local -a before after answer
          local word
          for word in "${(@)words[2,CURRENT-1]}"; do (( ${#before} < CURRENT - 2 )) && before+=("${(Q)word}"); done
          for word in "${(@)words[CURRENT+1,-1]}"; do (( CURRENT < ${#words} )) && after+=("${(Q)word}"); done
          answer=("${(@f)$("${${(Q)words[1]}/#\~\//$HOME/}" "[complete:$((CURRENT - 2))]" "${before[@]}" "=${(Q)PREFIX}" "${after[@]}" \
            2>/dev/null </dev/null)}")
          if [[ $answer[1] == words ]]; then
            compadd -- "${(@)answer[2,-1]}"
          else
            _files
          fi
        }
        if [[ ${funcstack[1]} == _tierodcalc ]]; then
          _tierodcalc "$@"
        else
          compdef _tierodcalc tierodcalc
        fi

        """;

    public const string Fish =
        """
        # Completion of tierodcalc for fish. Load it by: tierodcalc completion fish | source
        function __tierodcalc_complete
            set -l before (commandline -opc)
            set -l raw (commandline -ct)
            set -l word (string unescape -- $raw; or string trim -l -c '\'"' -- $raw)
            set -l after (commandline -op)[(math (count $before) + 1 + (test -n "$raw"; and echo 1; or echo 0))..-1]
            set -l program (string replace -r '^~/' "$HOME/" -- $before[1])
            set -l answer ($program "[complete:"(math (count $before) - 1)"]" $before[2..-1] "=$word" $after 2>/dev/null </dev/null)
            if test "$answer[1]" = words
                printf '%s\n' $answer[2..-1]
            else
                __fish_complete_path (commandline -ct)
            end
        end
        complete -c tierodcalc -f -a '(__tierodcalc_complete)'

        """;

    public const string PowerShell =
        """
        # Completion of tierodcalc for PowerShell. Load it by: tierodcalc completion powershell | Out-String | Invoke-Expression
        Register-ArgumentCompleter -Native -CommandName tierodcalc -ScriptBlock {
            param($wordToComplete, $commandAst, $cursorPosition)
            $before = @(); $current = ''; $after = @()
            foreach ($element in @($commandAst.CommandElements | Select-Object -Skip 1)) {
                $text = $element.Extent.Text
                if ($element -is [System.Management.Automation.Language.StringConstantExpressionAst]) { $text = $element.Value }
                if ($element.Extent.EndOffset -lt $cursorPosition) { $before += $text }
                elseif ($element.Extent.StartOffset -lt $cursorPosition) { $current = $text }
                else { $after += $text }
            }
            $encoding = [Console]::OutputEncoding
            try {
                [Console]::OutputEncoding = [System.Text.UTF8Encoding]::new()
                $program = $commandAst.CommandElements[0].Extent.Text.Trim('"', "'")
                $answer = @($null | & $program "[complete:$($before.Count)]" @before "=$current" @after 2>$null)
            }
            finally { [Console]::OutputEncoding = $encoding }
            if ($answer[0] -eq 'words') {
                $answer | Select-Object -Skip 1 | ForEach-Object {
                    $quoted = if ($_ -match "^[\w./+=\\:-]+$") { $_ } else { "'" + $_.Replace("'", "''") + "'" }
                    [System.Management.Automation.CompletionResult]::new($quoted, $_, 'ParameterValue', $_)
                }
            }
        }

        """;
}
