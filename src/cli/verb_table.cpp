#include "cli/verb.hpp"
#include "cli/verbs/verbs.hpp"

namespace fw::cli {

const std::vector<Verb>& verbs() {
  static const std::vector<Verb> table{
      {add_show, show_demo}, {add_measure}, {add_explain},  {add_check},    {add_nets},
      {add_picture},         {add_print},   {add_diagnose}, {add_practice}, {add_share},
  };
  return table;
}

}  // namespace fw::cli
