#include <algorithm>

#include "cli/guide/guide.hpp"
#include "cli/version.hpp"

namespace fw::cli {
namespace {

/// A text as it may stand on a line of its own: no sign of the format's own is left in it.
std::string roff(const std::string& text) {
  std::string out;
  for (const char c : text) {
    const bool begins_line = out.empty() || out.back() == '\n';
    if (begins_line && (c == '.' || c == '\'')) {
      out += "\\&";
    }
    if (c == '\\') {
      out += "\\e";
    } else if (c == '-') {
      out += "\\-";
    } else if (c == '"') {
      out += "\\(dq";
    } else {
      out += c;
    }
  }
  return out;
}

/// Long lines go on below, which a page that fills its lines doesn't show.
std::string wrapped(std::string text) {
  constexpr std::size_t most = 76;
  std::size_t begin = 0;
  while (text.size() - begin > most) {
    const std::size_t space = text.find_last_of(' ', begin + most);
    if (space == std::string::npos || space <= begin) {
      break;
    }
    text[space] = '\n';
    begin = space + 1;
  }
  return text;
}

std::string as_sentence(const std::string& text) { return text.empty() || text.back() == '.' ? text : text + "."; }

/// Lines of their own stay lines; what is indented in --help needs no indent here.
std::string roff_lines(const std::string& text) {
  std::string out;
  std::size_t begin = 0;
  while (begin <= text.size()) {
    const std::size_t end = std::min(text.find('\n', begin), text.size());
    const std::size_t word = std::min(text.find_first_not_of(' ', begin), end);
    out += (out.empty() ? "" : ".br\n") + roff(wrapped(text.substr(word, end - word))) + "\n";
    begin = end + 1;
  }
  return out;
}

std::string joined(const std::vector<std::string>& words, const std::string& between) {
  std::string text;
  for (const std::string& word : words) {
    text += (text.empty() ? "" : between) + word;
  }
  return text;
}

std::string option_line(const OptionHelp& option) {
  std::vector<std::string> names;
  for (const std::string& name : option.names) {
    names.push_back("\\fB" + roff(name) + "\\fR");
  }
  const std::string value = option.choices.empty() ? option.value : joined(option.choices, "|");
  return ".TP\n" + joined(names, ", ") + (value.empty() ? "" : " \\fI" + roff(value) + "\\fR") +
         (option.is_repeated ? " ..." : "") + "\n" + roff_lines(as_sentence(option.says)) +
         (option.usual.empty() ? "" : "Default: " + roff(option.usual) + ".\n") +
         (option.is_required ? "Required.\n" : "");
}

std::string verb_section(const VerbHelp& verb) {
  std::string text = ".SS \"" + roff(verb.name) + "\"\n" + roff_lines(as_sentence(verb.says)) + ".PP\n\\fBfoldwright " +
                     roff(verb.name) + "\\fR [\\fIOPTIONS\\fR]";
  for (const OptionHelp& argument : verb.arguments) {
    const std::string name = "\\fI" + roff(argument.names.front()) + "\\fR" + (argument.is_repeated ? "..." : "");
    text += argument.is_required ? " " + name : " [" + name + "]";
  }
  text += "\n";
  for (const OptionHelp& argument : verb.arguments) {
    text += ".TP\n\\fI" + roff(argument.names.front()) + "\\fR\n" + roff_lines(as_sentence(argument.says));
  }
  for (const OptionHelp& option : verb.options) {
    text += option_line(option);
  }
  return text;
}

constexpr const char* files_section = R"(.SH FILES
.TP
.I *.foldwright.json
Lessons. With this ending they open by double\-click.
.TP
.I /usr/share/foldwright/lessons
The demo lessons, and the JSON Schema of the format.
.TP
.I /usr/share/foldwright/foldwright.html
The page that opens in a browser, where it was built.
.TP
.I ~/.config/foldwright
Settings, and your place in each lesson.
.TP
.I ~/.local/share/foldwright
What was practiced. There are no names in it.
.SH ENVIRONMENT
.TP
.BR XDG_CONFIG_HOME ", " XDG_DATA_HOME
Folders to use in place of
.I ~/.config
and
.IR ~/.local/share .
)";

constexpr const char* examples_section = R"(.SH EXAMPLES
.TP
.B foldwright
opens the window on the demo lesson.
.TP
.B foldwright check my_class.foldwright.json
says what can't be read and what can't exist, before your class does.
.TP
.B foldwright print my_class.foldwright.json \-\-as key \-o key.pdf
prints the answer key.
)";

}  // namespace

std::string man_page(const ProgramHelp& help, const std::string& date) {
  std::string text = ".\\\" Written by the build from what --help says.\n.TH FOLDWRIGHT 1 \"" + date +
                     "\" \"Foldwright " + version + "\" \"User Commands\"\n" +
                     ".SH NAME\nfoldwright \\- unfolds solids into nets and counts their faces\n.SH SYNOPSIS\n" +
                     ".B foldwright\n.br\n.B foldwright\n.I VERB\n[\\fIOPTIONS\\fR] [\\fILESSON\\fR]\n" +
                     ".SH DESCRIPTION\n" + roff_lines(help.says) +
                     "Without a verb, the window opens on the demo lesson.\n" +
                     "Where a lesson is asked for, \\- is standard input.\n.SH OPTIONS\n";
  for (const OptionHelp& option : help.options) {
    text += option_line(option);
  }
  text += ".SH VERBS\n";
  for (const VerbHelp& verb : help.verbs) {
    text += verb_section(verb);
  }
  return text + ".SH \"EXIT STATUS\"\n" + roff_lines(help.footer) + files_section + examples_section;
}

}  // namespace fw::cli
