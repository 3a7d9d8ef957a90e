#include "cli/guide/program_help.hpp"

#include <CLI/CLI.hpp>

#include "cli/arguments.hpp"
#include "cli/verb.hpp"

namespace fw::cli {
namespace {

/// "TEXT:{board,every}" has its words between braces.
std::vector<std::string> words_in_braces(const std::string& type) {
  const std::size_t open = type.find('{');
  if (open == std::string::npos) {
    return {};
  }
  return CLI::detail::split(type.substr(open + 1, type.find('}') - open - 1), ',');
}

/// "UINT:UINT in [1 - 8]" says twice what it takes; what comes last says it best.
std::string value_of(const std::string& type) {
  const std::size_t colon = type.find(':');
  const bool has_words = colon != std::string::npos && type.find('{') != std::string::npos;
  return colon == std::string::npos ? type : has_words ? type.substr(0, colon) : type.substr(colon + 1);
}

OptionHelp help_of(const CLI::Option& option) {
  OptionHelp help;
  for (const std::string& letter : option.get_snames()) {
    help.names.push_back("-" + letter);
  }
  for (const std::string& word : option.get_lnames()) {
    help.names.push_back("--" + word);
  }
  if (option.get_positional()) {
    help.names = {option.get_name(true, false)};
  }
  if (option.get_type_size() != 0) {
    const std::string type = option.get_type_name();
    help.choices = words_in_braces(type);
    help.value = value_of(type);
    help.usual = option.get_default_str();
  }
  help.says = option.get_description();
  help.is_required = option.get_required();
  help.is_repeated = option.get_expected_max() == CLI::detail::expected_max_vector_size;
  return help;
}

std::vector<OptionHelp> options_of(const CLI::App& app, bool positional) {
  std::vector<OptionHelp> list;
  for (const CLI::Option* option : app.get_options()) {
    if (option->get_positional() == positional) {
      list.push_back(help_of(*option));
    }
  }
  return list;
}

}  // namespace

bool OptionHelp::takes_file() const { return value == file_type; }

ProgramHelp program_help() {
  CLI::App app;
  ExitStatus status = ExitStatus::Done;
  add_command_line(app, status);
  ProgramHelp help{app.get_description(), app.get_footer(), options_of(app, false), {}};
  for (const CLI::App* verb : app.get_subcommands([](const CLI::App*) { return true; })) {
    help.verbs.push_back(
        {verb->get_name(), verb->get_description(), options_of(*verb, true), options_of(*verb, false)});
  }
  return help;
}

}  // namespace fw::cli
