#include <algorithm>

#include "cli/guide/guide.hpp"

namespace fw::cli {
namespace {

std::string spaced(const std::vector<std::string>& words) {
  std::string text;
  for (const std::string& word : words) {
    text += (text.empty() ? "" : " ") + word;
  }
  return text;
}

/// A text between single quotes, as the three shells read it.
std::string quoted(const std::string& text) {
  std::string out = "'";
  for (const char c : text) {
    out += c == '\'' ? std::string("'\\''") : std::string(1, c);
  }
  return out + "'";
}

/// The first line of what --help says: a list of completions has one line for each.
std::string first_line(const OptionHelp& option) { return option.says.substr(0, option.says.find('\n')); }

std::vector<std::string> names_of(const std::vector<OptionHelp>& options) {
  std::vector<std::string> names;
  for (const OptionHelp& option : options) {
    names.insert(names.end(), option.names.begin(), option.names.end());
  }
  return names;
}

std::string verb_names(const ProgramHelp& help) {
  std::vector<std::string> names;
  for (const VerbHelp& verb : help.verbs) {
    names.push_back(verb.name);
  }
  return spaced(names);
}

/// The branch of a verb: what may follow its options, and else its options or files.
std::string bash_branch(const VerbHelp& verb) {
  std::string text = "    " + verb.name + ")\n      case $before in\n";
  for (const OptionHelp& option : verb.options) {
    if (option.value.empty()) {
      continue;
    }
    std::string names;
    for (const std::string& name : option.names) {
      names += (names.empty() ? "" : "|") + name;
    }
    const std::string words =
        option.takes_file() ? "files=yes" : "words=" + quoted(spaced(option.choices)) + "; options=";
    text += "        " + names + ") " + words + " ;;\n";
  }
  return text + "        *) options=" + quoted(spaced(names_of(verb.options))) +
         (verb.arguments.empty() ? "" : "; files=yes") + " ;;\n      esac\n      ;;\n";
}

/// What zsh offers for a value.
std::string zsh_values(const OptionHelp& option) {
  return option.takes_file() ? "_files" : option.choices.empty() ? " " : "(" + spaced(option.choices) + ")";
}

/// In _arguments, brackets and colons are signs of its own.
std::string zsh_text(const std::string& text) {
  std::string out;
  for (const char c : text) {
    out += c == '[' || c == ']' || c == ':' ? std::string("\\") + c : std::string(1, c);
  }
  return out;
}

std::string zsh_option(const OptionHelp& option) {
  std::string text;
  for (const std::string& name : option.names) {
    const std::string repeats = option.is_repeated ? "*" : "";
    const std::string value = option.value.empty() ? "" : ":" + zsh_text(option.value) + ":" + zsh_values(option);
    text += " \\\n        " + quoted(repeats + name + "[" + zsh_text(first_line(option)) + "]" + value);
  }
  return text;
}

std::string fish_option(const OptionHelp& option, const std::string& where) {
  std::string text = "complete -c foldwright -n " + quoted(where);
  for (const std::string& name : option.names) {
    text += name.substr(0, 2) == "--" ? " -l " + name.substr(2) : " -s " + name.substr(1);
  }
  if (option.takes_file()) {
    text += " -r -F";
  } else if (!option.value.empty()) {
    text += option.choices.empty() ? " -x" : " -x -a " + quoted(spaced(option.choices));
  }
  return text + " -d " + quoted(first_line(option)) + "\n";
}

}  // namespace

std::string bash_completion(const ProgramHelp& help) {
  std::string text =
      "# Written by the build from what foldwright --help says.\n_foldwright() {\n"
      "  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} verb='' options='' words='' "
      "files=''\n"
      "  [ \"$COMP_CWORD\" -gt 1 ] && verb=${COMP_WORDS[1]}\n  case $verb in\n";
  text += "    '') words=" + quoted(verb_names(help)) + "; options=" + quoted(spaced(names_of(help.options))) + " ;;\n";
  for (const VerbHelp& verb : help.verbs) {
    text += bash_branch(verb);
  }
  return text +
         "  esac\n"
         "  COMPREPLY=()\n"
         "  case $word in -*) words=\"$words $options\"; files= ;; esac\n"
         "  [ -n \"$words\" ] && mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"$word\")\n"
         "  if [ -n \"$files\" ]; then\n"
         "    compopt -o filenames\n"
         "    mapfile -t COMPREPLY < <(compgen -f -- \"$word\")\n"
         "  fi\n"
         "}\ncomplete -F _foldwright foldwright\n";
}

std::string zsh_completion(const ProgramHelp& help) {
  std::string text =
      "#compdef foldwright\n# Written by the build from what foldwright --help says.\n"
      "_foldwright() {\n  local -a verbs\n  verbs=(\n";
  for (const VerbHelp& verb : help.verbs) {
    text += "    " + quoted(verb.name + ":" + verb.says) + "\n";
  }
  text += "  )\n  if (( CURRENT == 2 )); then\n    _describe verb verbs\n    _arguments";
  for (const OptionHelp& option : help.options) {
    text += zsh_option(option);
  }
  text += "\n    return\n  fi\n  local verb=$words[2]\n  shift words\n  (( CURRENT-- ))\n  case $verb in\n";
  for (const VerbHelp& verb : help.verbs) {
    text += "    " + verb.name + ")\n      _arguments";
    for (const OptionHelp& option : verb.options) {
      text += zsh_option(option);
    }
    for (const OptionHelp& argument : verb.arguments) {
      text += " \\\n        " + quoted(std::string(argument.is_repeated ? "*" : "") + ":" + argument.names.front() +
                                       ":_files -g \"*.json(-.)\"");
    }
    text += "\n      ;;\n";
  }
  return text + "  esac\n}\n_foldwright \"$@\"\n";
}

std::string fish_completion(const ProgramHelp& help) {
  std::string text = "# Written by the build from what foldwright --help says.\ncomplete -c foldwright -f\n";
  for (const OptionHelp& option : help.options) {
    text += fish_option(option, "__fish_use_subcommand");
  }
  for (const VerbHelp& verb : help.verbs) {
    const std::string where = "__fish_seen_subcommand_from " + verb.name;
    text += "complete -c foldwright -n '__fish_use_subcommand' -a " + verb.name + " -d " + quoted(verb.says) + "\n";
    for (const OptionHelp& option : verb.options) {
      text += fish_option(option, where);
    }
    if (!verb.arguments.empty()) {
      text += "complete -c foldwright -n " + quoted(where) + " -F\n";
    }
  }
  return text;
}

}  // namespace fw::cli
