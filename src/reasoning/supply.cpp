#include "reasoning/supply.hpp"

#include <algorithm>

#include "exact/print_number.hpp"
#include "lessons/open_faces.hpp"
#include "reasoning/supply_steps.hpp"

namespace fw::reasoning {
namespace {

using exact::Number;
using lessons::Rounding;
using lessons::Supply;

Decision decision_of(const Supply& supply) {
  const Message thing =
      supply.item.empty() ? message("The material") : message("{item:A}", {{"item", Noun{supply.item}}});
  switch (supply.purpose) {
    case Purpose::Cover:
      return {supply.purpose, message("{thing} covers faces, so find an area, in square units.", {{"thing", thing}})};
    case Purpose::Fill:
      return {supply.purpose,
              message("{thing} fills the space inside, so find a volume, in cubic units.", {{"thing", thing}})};
    case Purpose::Edge:
      break;
  }
  return {supply.purpose, message("{thing} runs along edges, so find a length.", {{"thing", thing}})};
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

Step sum_step(const AmountSum& sum, const Message& reason) {
  Step step;
  step.kind = StepKind::Work;
  step.reason = reason;
  step.line = sum.line;
  step.outcome = Outcome{sum.total, sum.unit};
  step.faces = sum.faces;
  return step;
}

Message open_reason(const lessons::Problem& problem) {
  const std::vector<FaceId> open = lessons::open_faces(problem);
  const std::size_t all = problem.solid.faces().size();
  const Noun part{problem.solid.part()};
  std::vector<Message> names;
  for (const lessons::OpenFaces& entry : problem.open) {
    const bool is_number = entry.name.find_first_not_of("0123456789") == std::string::npos;
    names.push_back(is_number ? message("{part} {number}", {{"part", part}, {"number", entry.name}})
                              : message("the {face}", {{"face", Noun{entry.name}}}));
  }
  const Message faces = message("{names:and}", {{"names", names}});
  const std::size_t left = all - open.size();
  return open.size() == 1
             ? message("{faces:up} is open, so leave it out. {left} of the {all} {part:s} are left to add.",
                       {{"faces", faces}, {"part", part}, {"left", left}, {"all", all}})
             : message("{faces:up} are open, so leave them out. {left} of the {all} {part:s} are left to add.",
                       {{"faces", faces}, {"part", part}, {"left", left}, {"all", all}});
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
    work.amount_step = sum_step(sum, message("Count the edges: {count}. Group the edges of the same length.",
                                             {{"count", problem.solid.body().edge_count()}}));
    return;
  }
  const solids::Measure* length = length_named(problem.solid, measure);
  ensure(length != nullptr, "a supply runs along a length that its solid does not have");
  const auto value = problem.solid.values().find(length->symbol.name);
  ensure(value != problem.solid.values().end(), "a length of a solid that exists has no value");
  work.title = length->title;
  work.amount = units::Length::of(value->second, problem.solid.unit());
}

void find_amount(const lessons::Problem& problem, const std::string& measure, SupplyWork& work, int places) {
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

// "covers", "hold", "is enough for".
Message verb_of(Purpose purpose, const std::string& count) {
  return purpose == Purpose::Cover  ? message("{count:covers|cover}", {{"count", count}})
         : purpose == Purpose::Fill ? message("{count:holds|hold}", {{"count", count}})
                                    : message("{count:is enough for|are enough for}", {{"count", count}});
}

// What is whole at the end: "5 cups can be filled completely".
Message made_word(Purpose purpose) {
  return purpose == Purpose::Cover  ? message("can be covered completely")
         : purpose == Purpose::Fill ? message("can be filled completely")
                                    : message("can be cut at full length");
}

Message rounding_reason(const Supply& supply, Purpose purpose, const Number& floor, bool is_whole) {
  const std::string count = times_word(floor);
  const Noun item{supply.item};
  const Message made = made_word(purpose);
  if (supply.rounding == Rounding::Down) {
    return is_whole ? message("{count} {item#count} {made}, with nothing left over.",
                              {{"count", count}, {"item", item}, {"made", made}})
           : floor.is_zero()
               ? message("That isn't enough for even one {item}.", {{"item", item}})
               : message("{count} {item#count} {made}. What is left is not enough for another, so round down.",
                         {{"count", count}, {"item", item}, {"made", made}});
  }
  return is_whole ? message("{count} {item#count} {count:is|are} just enough, with nothing left over.",
                            {{"count", count}, {"item", item}})
         : floor.is_zero()
             ? message("You can't buy part of {item:a}, so round up.", {{"item", item}})
             : message("{count} {item#count} {count:is|are} not enough, and you can't buy part of {item:a}. Round up.",
                       {{"count", count}, {"item", item}});
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
  [[nodiscard]] Message each_sentence() const {
    return message("one {item} {does} {each}",
                   {{"item", item()}, {"does", verb_of(work_->decision.purpose, "1")}, {"each", supply_->each->text}});
  }
  [[nodiscard]] Noun item() const { return {supply_->item}; }
  [[nodiscard]] SupplyNumber amount() {
    const std::size_t source =
        steps_.add_source(Source::Kind::EarlierStep,
                          message("the {amount}, found before", {{"amount", Noun{work_->title}}}), work_->faces);
    return {amount_number(work_->amount), amount_unit(work_->amount), source, ""};
  }

  void lay_coats() {
    if (supply_->coats == 1) {
      return;
    }
    const int count = supply_->coats;
    const std::size_t source = steps_.add_source(Source::Kind::Known, message("{count} coats", {{"count", count}}));
    const SupplyNumber coats{Number::whole(count), {}, source, ""};
    needed_ = steps_.work_out(StepKind::Count,
                              message("{count} coats: every face is covered {count} times.", {{"count", count}}), coats,
                              "×", needed_, {coats.value * needed_.value, needed_.unit, {}, ""});
  }

  void divide() {
    answer_.quotient = needed_.value / each_.value;
    quotient_ = steps_.work_out(StepKind::Count,
                                message("One {item} {does} {each}. How many {item:s} does it take for {needed}?",
                                        {{"item", item()},
                                         {"does", verb_of(work_->decision.purpose, "1")},
                                         {"each", steps_plain(each_)},
                                         {"needed", steps_plain(needed_)}}),
                                needed_, "÷", each_, {answer_.quotient, {}, {}, ""});
  }

  void round_off() {
    const Number floor = exact::floor(answer_.quotient);
    const bool is_whole = floor == answer_.quotient;
    if (supply_->rounding == Rounding::None) {
      answer_.count = answer_.quotient;
      count_ = quotient_;
      steps_.say(StepKind::Count,
                 message("You can use part of {item:a}, so don't round up or down.", {{"item", item()}}));
      return;
    }
    const bool goes_up = supply_->rounding == Rounding::Up && !is_whole;
    answer_.count = goes_up ? floor + Number::whole(1) : floor;
    count_ = steps_.state(
        StepKind::Count, rounding_reason(*supply_, work_->decision.purpose, floor, is_whole),
        algebra::leaf(algebra::Notation::Kind::Words, said(message("number of {item:s}", {{"item", item()}}))), true,
        {answer_.count, {}, {}, ""});
    steps_.join(Step::OnBoard::JoinsAndTells);
  }

  void leave_over() {
    if (answer_.count == answer_.quotient) {
      return;
    }
    if (answer_.count.is_zero()) {
      answer_.leftover = Leftover{needed_.value, *each_.unit, answer_.quotient, rest_text(needed_, answer_.quotient)};
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
    const SupplyNumber rest = steps_.work_out(StepKind::Count,
                                              is_up ? message("Subtract what is needed. The rest is left over.")
                                                    : message("Subtract that. The rest is left over."),
                                              greater, "−", less, {left.amount, left.unit, {}, ""});
    steps_.join(Step::OnBoard::JoinsAndTells);
    steps_.work_out(StepKind::Count, message("What part of one {item} is that?", {{"item", item()}}), rest, "÷", each_,
                    {left.share, {}, {}, ""});
    if (steps_.shown(rest).exact) {  // longer numbers need the line for themselves
      steps_.join(Step::OnBoard::Joins);
    }
    left.text = rest_text(rest, left.share);
    answer_.leftover = std::move(left);
  }

  // What the counted items cover, hold or reach along, all together.
  SupplyNumber used() {
    const std::string count = times_word(answer_.count);
    return steps_.work_out(
        StepKind::Count,
        message("Together, {count} {item#count} {does} this much.",
                {{"count", count}, {"item", item()}, {"does", verb_of(work_->decision.purpose, count)}}),
        count_, "×", each_, {answer_.count * each_.value, each_.unit, {}, ""});
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
        price.amount,
        {},
        steps_.add_source(Source::Kind::Known, message("the price of one {item}", {{"item", item()}})),
        price.text};
    const Message reason =
        supply_->rounding == Rounding::None
            ? message("Part of {item:a} costs part of the price.", {{"item", item()}})
            : message("Now find the cost. Each {item} costs {price}.", {{"item", item()}, {"price", price.text}});
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
    const Message count = message("{count} {item#count}", {{"count", shown.text}, {"item", item()}});
    answer_.text = shown.exact ? count : message("≈ {count}", {{"count", count}});
    const Message all = answer_.count.is_zero() ? message("Not even one {item}", {{"item", item()}})
                        : shown.exact           ? count
                                                : message("About {count}", {{"count", count}});
    std::vector<Message> sentences{
        supply_->rounding == Rounding::Down
            ? message("{all} {made}.", {{"all", all}, {"made", made_word(work_->decision.purpose)}})
        : answer_.count == Number::whole(1) ? message("{all} is needed.", {{"all", all}})
                                            : message("{all} are needed.", {{"all", all}})};
    if (answer_.leftover) {
      sentences.push_back(message("Left over: {rest}.", {{"rest", answer_.leftover->text}}));
    }
    if (answer_.cost) {
      sentences.push_back(message("Cost: {cost}.", {{"cost", answer_.cost_text}}));
    }
    answer_.sentence = one_after_another(sentences);
    steps_.say(StepKind::Answer, answer_.sentence).outcome = Outcome{answer_.count, std::nullopt};
    return answer_;
  }

  /// "16 ft², about 0.36 of a roll".
  [[nodiscard]] Message rest_text(const SupplyNumber& left, const Number& share) const {
    const Message rest = about(shown_apart(left.value, places_), left.unit->text());
    const exact::Shown shown = shown_apart(share, places_);
    return shown.exact
               ? message("{rest}, {share} of {item:a}", {{"rest", rest}, {"share", shown.text}, {"item", item()}})
               : message("{rest}, about {share} of {item:a}",
                         {{"rest", rest}, {"share", shown.text}, {"item", item()}});
  }
  [[nodiscard]] Message steps_plain(const SupplyNumber& number) const {
    const exact::Shown shown = steps_.shown(number);
    const words::Amount amount{shown.text, number.unit ? number.unit->text() : ""};
    return shown.exact ? message("{amount}", {{"amount", amount}}) : message("about {amount}", {{"amount", amount}});
  }

  const Supply* supply_;
  SupplyWork* work_;
  SupplySteps steps_;
  int places_;
  SupplyNumber each_{}, needed_{}, quotient_{}, count_{};
  SupplyAnswer answer_;
};

}  // namespace

SupplyWork supply_work(const lessons::Problem& problem, const Supply& supply, int places) {
  SupplyWork work;
  work.decision = decision_of(supply);
  find_amount(problem, supply.measure, work, places);
  if (supply.each) {
    work.answer = Answering(supply, work, places).worked();
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
