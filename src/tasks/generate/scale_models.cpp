#include "tasks/generate/scale_models.hpp"

#include <algorithm>
#include <utility>

namespace fw::tasks {
namespace {

int least_of(const Form& form) {
  int smallest = form.sizes[0].least;
  for (const Range& range : form.sizes) {
    smallest = range.most > 0 ? std::min(smallest, range.least) : smallest;
  }
  return smallest;
}

// In which a length is as long as a person is tall, or longer.
bool is_large(const Form& form) { return form.greatest() >= (form.unit == "cm" ? 120 : form.unit == "in" ? 48 : 4); }
int largest_giant(const Form& form) { return form.unit == "cm" ? 300 : form.unit == "in" ? 120 : 10; }

Form shrunk(Form form, int factor) {
  for (Range& range : form.sizes) {
    if (range.most > 0) {
      range = {(range.least + factor - 1) / factor, range.most / factor, 1};
    }
  }
  return form;
}

}  // namespace

std::vector<CopyPlan> copy_plans(const Blueprint& blueprint) {
  constexpr std::size_t few = 6;  // with fewer sizes, problems would be alike
  constexpr int least_edge = 2;
  const Form& form = blueprint.form();
  std::vector<CopyPlan> plans;
  if (blueprint.thing().has(IsLump)) {
    return plans;
  }
  const auto add = [&](CopyPlan::Sort sort, const std::string& factor, const Form& shown) {
    if (blueprint.family().sizes(shown) >= few) {
      plans.push_back({sort, factor, shown});
    }
  };
  for (const int factor : {4, 5, 10}) {
    const Form model = shrunk(form, factor);
    if (is_large(form) && least_of(model) >= least_edge) {
      add(CopyPlan::Sort::Real, std::to_string(factor), model);
    } else if (!is_large(form) && factor * form.greatest() <= largest_giant(form)) {
      add(CopyPlan::Sort::Giant, std::to_string(factor), form);
    }
  }
  if (blueprint.level < 3) {
    return plans;
  }
  for (const auto& [text, factor] : {std::pair("1.5", 1.5), std::pair("2.5", 2.5)}) {
    if (!is_large(form) && factor * form.greatest() <= largest_giant(form)) {
      add(CopyPlan::Sort::Giant, text, form);
    }
  }
  for (const auto& [text, factor] : {std::pair("1/2", 2), std::pair("1/5", 5), std::pair("1/10", 10)}) {
    if (least_of(form) >= factor * least_edge) {
      add(CopyPlan::Sort::Model, text, form);
    }
  }
  return plans;
}

// ---- made up ----

std::string as_long(const std::string& factor) {
  return factor == "1/2"    ? "half as long"
         : factor == "1/5"  ? "one fifth as long"
         : factor == "1/10" ? "one tenth as long"
                            : factor + " times as long";
}

}  // namespace fw::tasks
