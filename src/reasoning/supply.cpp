#include "reasoning/supply.hpp"

#include <algorithm>

#include "exact/print_number.hpp"
#include "lessons/asked.hpp"
#include "lessons/open_faces.hpp"
#include "reasoning/nouns.hpp"
#include "reasoning/supply_steps.hpp"

namespace fw::reasoning {
namespace {

using exact::Number;
using lessons::Rounding;
using lessons::Supply;

Decision decision_of(const Supply& supply) {
  const std::string thing = supply.item.empty() ? "What is asked for " : sentence_case(one(supply.item)) + " ";
  if (supply.purpose == "cover") {
    return {Purpose::Cover, "cover", thing + "covers faces, so the amount is an area, in square units."};
  }
  if (supply.purpose == "fill") {
    return {Purpose::Fill, "fill", thing + "fills the space inside, so the amount is a volume, in cubic units."};
  }
  return {Purpose::Edge, "edge", thing + "runs along edges, so the amount is a length."};
}

// --- the amount ---

const solids::Measure* length_named(const solids::Solid& solid, const std::string& name) {
  for (const solids::Measure& measure : solid.statement().measures) {
    const std::string key = measure.in_base ? "base." + measure.key : measure.key;
    if (measure.symbol.name == name || (!measure.key.empty() && key == name)) {
      return &measure;
    }
  }
  return nullptr;
}

Step sum_step(const AmountSum& sum, const std::string& reason) {
  Step step;
  step.kind = StepKind::Work;
  step.reason = reason;
  step.line = sum.line;
  step.outcome = Outcome{sum.total, sum.unit};
  step.faces = sum.faces;
  return step;
}

std::string open_reason(const lessons::Problem& problem) {
  const std::vector<FaceId> open = lessons::open_faces(problem);
  const std::size_t all = problem.solid.faces().size();
  std::string names;
  for (const lessons::OpenFaces& entry : problem.open) {
    const bool is_number = entry.name.find_first_not_of("0123456789") == std::string::npos;
    names += (names.empty()                    ? ""
              : &entry == &problem.open.back() ? " and "
                                               : ", ") +
             (is_number ? "face " + entry.name : "the " + entry.name);
  }
  return sentence_case(names) + (open.size() == 1 ? " is open, so it does" : " are open, so they do") +
         " not count: " + std::to_string(all - open.size()) + " of " + std::to_string(all) +
         " faces are left to add up.";
}

void find_area(const lessons::Problem& problem, const std::string& measure, SupplyWork& work, int places) {
  const AmountSum sum = faces_that_count(problem, measure, places);
  work.faces = sum.faces;
  work.amount = units::Area::of(sum.total, sum.unit);
  work.title = measure == "surface_area" ? "surface area" : measure == "lateral_area" ? "lateral area" : "base area";
  if (measure == "surface_area" && !problem.open.empty()) {
    work.title = "area of the faces that count";
    work.amount_step = sum_step(sum, open_reason(problem));
  }
}

void find_length(const lessons::Problem& problem, const std::string& measure, SupplyWork& work, int places) {
  if (measure == "edges") {
    const AmountSum sum = all_edges(problem.solid, places);
    work.title = "length of all edges";
    work.amount = units::Length::of(sum.total, sum.unit);
    work.amount_step = sum_step(sum, "Count the edges: " + std::to_string(problem.solid.body().edge_count()) +
                                         ". Edges of the same length are added up together.");
    return;
  }
  const solids::Measure* length = length_named(problem.solid, measure);
  ensure(length != nullptr, "a supply runs along a length that its solid does not have");
  const auto value = problem.solid.values().find(length->symbol.name);
  ensure(value != problem.solid.values().end(), "a length of a solid that exists has no value");
  work.title = length->title;
  work.amount = units::Length::of(value->second, problem.solid.unit());
}

void find_amount(const lessons::Problem& problem, SupplyWork& work, int places) {
  const std::string& measure = problem.supply->measure;
  if (work.decision.purpose == Purpose::Cover) {
    find_area(problem, measure, work, places);
  } else if (work.decision.purpose == Purpose::Fill) {
    work.title = "volume";
    work.amount = problem.solid.volume();
  } else {
    find_length(problem, measure, work, places);
  }
}

// --- the count ---

std::string times_word(const Number& count) { return exact::shown(count, 0).text; }

std::string is_or_are(const Number& count) { return count == Number::whole(1) ? " is" : " are"; }

// "covers", "hold", "reaches along".
std::string verb_of(Purpose purpose, bool several) {
  switch (purpose) {
    case Purpose::Cover:
      return several ? "cover" : "covers";
    case Purpose::Fill:
      return several ? "hold" : "holds";
    case Purpose::Edge:
      return several ? "reach along" : "reaches along";
  }
  return "";
}

// What is whole at the end: "5 cups can be filled completely".
std::string made_word(Purpose purpose) {
  return purpose == Purpose::Cover  ? "can be covered completely"
         : purpose == Purpose::Fill ? "can be filled completely"
                                    : "can be cut at full length";
}

std::string rounding_reason(const Supply& supply, Purpose purpose, const Number& floor, bool is_whole) {
  const std::string several = counted(times_word(floor), supply.item);
  if (supply.rounding == Rounding::Down) {
    return is_whole ? several + " " + made_word(purpose) + ", and nothing is left."
           : floor.is_zero()
               ? "It is not enough for even one " + supply.item + "."
               : several + " " + made_word(purpose) + "; what is left is not enough for another one: round down.";
  }
  if (is_whole) {
    return several + is_or_are(floor) + " just enough, and nothing is left.";
  }
  const std::string part = "a part of " + one(supply.item) + " cannot be bought: round up.";
  return floor.is_zero() ? sentence_case(part) : several + is_or_are(floor) + " too few, and " + part;
}

class Answering {
 public:
  Answering(const Supply& supply, SupplyWork& work, int places)
      : supply_(&supply), work_(&work), steps_(work, places), places_(places) {}

  SupplyAnswer worked() {
    const units::WrittenQuantity& each = *supply_->each;
    const bool is_one_number = !each.has_unit || each.number.text != each.text;
    each_ = {each.number.value, each.unit, steps_.add_source(Source::Kind::Known, each_sentence()),
             is_one_number ? each.number.text : ""};
    needed_ = converted(steps_, amount(), each.unit);
    lay_coats();
    divide();
    round_off();
    leave_over();
    price_up();
    return conclude();
  }

 private:
  [[nodiscard]] std::string each_sentence() const {
    return "one " + supply_->item + " " + verb_of(work_->decision.purpose, false) + " " + supply_->each->text;
  }
  [[nodiscard]] SupplyNumber amount() {
    const std::size_t source =
        steps_.add_source(Source::Kind::EarlierStep, "the " + work_->title + ", worked out before", work_->faces);
    return {amount_number(work_->amount), amount_unit(work_->amount), source, ""};
  }

  void lay_coats() {
    if (supply_->coats == 1) {
      return;
    }
    const std::string number = std::to_string(supply_->coats);
    const SupplyNumber coats{
        Number::whole(supply_->coats), {}, steps_.add_source(Source::Kind::Known, number + " coats"), ""};
    needed_ = steps_.work_out(StepKind::Count, number + " coats: every face is covered " + number + " times.", coats,
                              "×", needed_, {coats.value * needed_.value, needed_.unit, {}, ""});
  }

  void divide() {
    const std::string each = steps_plain(each_);
    answer_.quotient = needed_.value / each_.value;
    quotient_ = steps_.work_out(StepKind::Count,
                                "One " + supply_->item + " " + verb_of(work_->decision.purpose, false) + " " + each +
                                    ". How many times does that go into " + steps_plain(needed_) + "?",
                                needed_, "÷", each_, {answer_.quotient, {}, {}, ""});
  }

  void round_off() {
    const Number floor = exact::floor(answer_.quotient);
    const bool is_whole = floor == answer_.quotient;
    if (supply_->rounding == Rounding::None) {
      answer_.count = answer_.quotient;
      count_ = quotient_;
      steps_.say(StepKind::Count,
                 "A part of " + one(supply_->item) + " can be had, so the number is not rounded up or down.");
      return;
    }
    const bool goes_up = supply_->rounding == Rounding::Up && !is_whole;
    answer_.count = goes_up ? floor + Number::whole(1) : floor;
    count_ = steps_.state(StepKind::Count, rounding_reason(*supply_, work_->decision.purpose, floor, is_whole),
                          algebra::leaf(algebra::Notation::Kind::Words, "number of " + plural(supply_->item)), true,
                          {answer_.count, {}, {}, ""});
  }

  void leave_over() {
    if (answer_.count == answer_.quotient) {
      return;
    }
    if (answer_.count.is_zero()) {
      answer_.leftover = Leftover{needed_.value, *each_.unit, answer_.quotient,
                                  steps_plain(needed_) + ", " + share_text(answer_.quotient)};
      return;
    }
    const bool is_up = supply_->rounding == Rounding::Up;
    const SupplyNumber whole = used();
    const SupplyNumber& greater = is_up ? whole : needed_;
    const SupplyNumber& less = is_up ? needed_ : whole;
    Leftover left;
    left.unit = *each_.unit;
    left.amount = greater.value - less.value;
    left.share = left.amount / each_.value;
    const SupplyNumber rest = steps_.work_out(
        StepKind::Count,
        is_up ? "Take off what is needed: the rest is left over." : "Take that off: the rest is left over.", greater,
        "−", less, {left.amount, left.unit, {}, ""});
    steps_.work_out(StepKind::Count, "What part of one " + supply_->item + " is that?", rest, "÷", each_,
                    {left.share, {}, {}, ""});
    left.text = steps_plain(rest) + ", " + share_text(left.share);
    answer_.leftover = std::move(left);
  }

  // What the counted items cover, hold or reach along, all together.
  SupplyNumber used() {
    const std::string item = counted(times_word(answer_.count), supply_->item);
    const bool several = !(answer_.count == Number::whole(1));
    return steps_.work_out(StepKind::Count,
                           item + " " + verb_of(work_->decision.purpose, several) + " this much together.", count_, "×",
                           each_, {answer_.count * each_.value, each_.unit, {}, ""});
  }

  void price_up() {
    if (!supply_->price) {
      return;
    }
    const lessons::Price& price = *supply_->price;
    const Number cost = answer_.count * price.amount;
    const Number cents = exact::rounded(cost, 2);
    answer_.cost = cents;
    const bool is_plain = cents.is_whole() && price.text.find('.') == std::string::npos;
    answer_.cost_text = price.sign + (is_plain ? exact::shown(cents, 0).text : exact::fixed_text(cents, 2));
    const SupplyNumber one_price{
        price.amount, {}, steps_.add_source(Source::Kind::Known, "the price of one " + supply_->item), price.text};
    const std::string reason =
        supply_->rounding == Rounding::None
            ? "A part of " + one(supply_->item) + " costs a part of the price."
            : "Count first, then the money: each " + supply_->item + " costs " + price.text + ".";
    const bool exact = exact::shown(answer_.count, places_).exact && cents == cost;
    steps_.state(StepKind::Count, reason,
                 algebra::row({steps_.notation(count_), algebra::leaf(algebra::Notation::Kind::Sign, "×"),
                               steps_.notation(one_price)}),
                 exact, {cents, {}, {}, answer_.cost_text});
    if (exact) {
      steps_.add_aside(aside_of(answer_.count, "×", price.amount, places_));
    }
  }

  SupplyAnswer conclude() {
    const exact::Shown shown = shown_apart(answer_.count, places_);
    answer_.text = (shown.exact ? "" : "≈ ") + counted(shown.text, supply_->item);
    const std::string about = shown.exact ? "" : "About ";
    const bool is_made = supply_->rounding == Rounding::Down;
    answer_.sentence =
        (answer_.count.is_zero() ? "Not even one " + supply_->item : about + counted(shown.text, supply_->item)) +
        (is_made ? " " + made_word(work_->decision.purpose) : is_or_are(answer_.count) + " needed") + ".";
    if (answer_.leftover) {
      answer_.sentence += " Left over: " + answer_.leftover->text + ".";
    }
    if (answer_.cost) {
      answer_.sentence += " Cost: " + answer_.cost_text + ".";
    }
    steps_.say(StepKind::Answer, answer_.sentence).outcome = Outcome{answer_.count, std::nullopt};
    return answer_;
  }

  [[nodiscard]] std::string share_text(const Number& share) const {
    const exact::Shown shown = shown_apart(share, places_);
    return (shown.exact ? "" : "about ") + shown.text + " of " + one(supply_->item);
  }
  [[nodiscard]] std::string steps_plain(const SupplyNumber& number) const {
    const bool exact = !number.text.empty() || shown_apart(number.value, places_).exact;
    return (exact ? "" : "about ") + algebra::plain_text(steps_.notation(number));
  }

  const Supply* supply_;
  SupplyWork* work_;
  SupplySteps steps_;
  int places_;
  SupplyNumber each_{}, needed_{}, quotient_{}, count_{};
  SupplyAnswer answer_;
};

}  // namespace

std::optional<SupplyWork> supply_work(const lessons::Problem& problem, int places) {
  if (!problem.supply || problem.supply->box) {
    return std::nullopt;
  }
  SupplyWork work;
  work.decision = decision_of(*problem.supply);
  find_amount(problem, work, places);
  if (problem.supply->each) {
    work.answer = Answering(*problem.supply, work, places).worked();
  }
  return work;
}

exact::Number amount_number(const Amount& amount) {
  return std::visit([](const auto& quantity) { return quantity.amount(); }, amount);
}

units::Unit amount_unit(const Amount& amount) {
  return std::visit([](const auto& quantity) { return quantity.unit(); }, amount);
}

std::string amount_text(const Amount& amount, int places) {
  return std::visit([places](const auto& quantity) { return units::text(quantity, places); }, amount);
}

}  // namespace fw::reasoning
