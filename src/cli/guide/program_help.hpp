#pragma once

#include <string>
#include <vector>

// What --help says of the program and of each verb, as data. The man page and the shells' completions are written from
// it, so that they can't say anything else.
namespace fw::cli {

struct OptionHelp {
  std::vector<std::string> names;    ///< "-o", "--output"; or, without dashes, the one name "LESSON"
  std::string value;                 ///< "FILE", "TEXT", "number from 0 to 1"; empty for a flag
  std::vector<std::string> choices;  ///< the words that it takes; empty where it takes any
  std::string usual;                 ///< the default; often empty
  std::string says;                  ///< what --help says of it; may have several lines
  bool is_required = false;
  bool is_repeated = false;

  [[nodiscard]] bool takes_file() const;
};

struct VerbHelp {
  std::string name;
  std::string says;
  std::vector<OptionHelp> arguments;  ///< without dashes, in their order
  std::vector<OptionHelp> options;
};

struct ProgramHelp {
  std::string says;
  std::string footer;  ///< the exit statuses
  std::vector<OptionHelp> options;
  std::vector<VerbHelp> verbs;
};

[[nodiscard]] ProgramHelp program_help();

}  // namespace fw::cli
