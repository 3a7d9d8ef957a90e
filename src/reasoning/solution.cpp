#include "reasoning/solution.hpp"

#include <algorithm>

#include "exact/print_number.hpp"
#include "reasoning/arithmetic.hpp"
#include "reasoning/board/face_board.hpp"
#include "reasoning/board/formula_board.hpp"
#include "reasoning/chain.hpp"
#include "reasoning/conversions.hpp"
#include "reasoning/face_route.hpp"
#include "reasoning/link_steps.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/worksheet.hpp"

namespace fw::reasoning {
namespace {

using algebra::Equation;
using algebra::Symbol;
using exact::Number;

std::set<std::string> given_names(const solids::Solid& solid, const Symbol& asked) {
  std::set<std::string> names;
  for (const auto& [name, value] : solid.values()) {
    if (name != asked.name && solid.is_given({name, "", 1})) {
      names.insert(name);
    }
  }
  return names;
}

// What the formulas of a chain start from.
std::vector<Symbol> givens_used(const solids::Solid& solid, const std::vector<Link>& links) {
  std::vector<Symbol> used;
  for (const Link& link : links) {
    const Equation equation = composed(link);
    std::vector<Symbol> inputs = algebra::symbols_of(equation.left - equation.right);
    if (link.derivation != nullptr) {
      inputs = link.derivation->from;
    }
    for (const Symbol& input : inputs) {
      if (solid.is_given(input) && std::find(used.begin(), used.end(), input) == used.end()) {
        used.push_back(input);
      }
    }
  }
  return used;
}

// Which of the labels that the answer comes from are rounded ones.
std::vector<std::string> rounded_labels(const solids::Solid& solid, const std::vector<Symbol>& used) {
  std::vector<std::string> labels;
  for (const Symbol& measure : used) {
    const units::WrittenQuantity* written = solid.written(measure);
    const std::string& name = measure.name;
    const bool is_rounded =
        std::any_of(solid.remarks().begin(), solid.remarks().end(), [&](const solids::Fault& remark) {
          return remark.severity == solids::Severity::Rounding &&
                 (remark.measure == name || name.rfind(remark.measure + ".", 0) == 0);
        });
    if (written != nullptr && is_rounded && std::find(labels.begin(), labels.end(), written->text) == labels.end()) {
      labels.push_back(written->text);
    }
  }
  return labels;
}

std::vector<Message> notes_on(const solids::Solid& solid, const std::vector<Symbol>& used,
                              const std::vector<Link>& links) {
  std::vector<Message> notes;
  const std::vector<std::string> labels = rounded_labels(solid, used);
  if (!labels.empty()) {
    notes.push_back(labels.size() == 1 ? message("The label {label} is rounded. We use it as written, so the answer is "
                                                 "only as exact as the label.",
                                                 {{"label", labels.front()}})
                                       : message("The labels {labels:and} are rounded. We use them as written, so the "
                                                 "answer is only as exact as the labels.",
                                                 {{"labels", labels}}));
  }
  // What is taken for granted about the figure matters to lengths, and to what comes from them.
  if (std::any_of(links.begin(), links.end(), [](const Link& link) { return link.unknown.dimension == 1; })) {
    for (const solids::Fault& remark : solid.remarks()) {
      if (remark.severity == solids::Severity::Missing) {
        notes.push_back(message("{remark:up}.", {{"remark", remark.message}}));
      }
    }
  }
  return notes;
}

// Decimals of an answer where nobody said how many: two, or what is enough; after a change of unit all, where it ends.
int answer_places(const Number& amount, bool converted) {
  constexpr int places = 2;
  constexpr int most = 9;
  const std::optional<int> needed = converted ? exact::decimals_needed(amount, most) : std::nullopt;
  return needed ? std::max(places, *needed) : exact::enough_places(amount, places);
}

Answer answered(Worksheet& sheet, const Symbol& asked, const Number& value, const SolutionOptions& options) {
  const solids::Solid& solid = sheet.solid();
  const units::Unit own = solid.unit().to_the(asked.dimension);
  const units::Unit unit = options.unit.value_or(own);
  Number amount = value;
  if (!(unit == own)) {
    amount = value * units::conversion(own, unit);
    convert_answer(sheet, asked, value, own, unit);
  }
  const int places = options.places ? *options.places : answer_places(amount, !(unit == own));
  Answer answer{amount, unit, places, "", "", {}};
  const exact::Shown shown = exact::rounded_to(amount, places);
  answer.text = (shown.exact ? "" : "≈ ") + shown.text + " " + unit.text();
  if (!shown.exact) {
    answer.exact_text = exact::has_class_form(amount) ? bracketed(exact::exact_text(amount)) + " " + unit.text() : "";
    write_rounded(sheet, asked, amount, unit, places);
  }
  return answer;
}

// The first two lines of every solution, and the units.
void begin(Worksheet& sheet, const Symbol& asked, const std::vector<Symbol>& used, const SolutionOptions& options) {
  const solids::Solid& solid = sheet.solid();
  const units::Unit unit = options.unit.value_or(solid.unit().to_the(asked.dimension));
  Step& ask = sheet.say(StepKind::Ask, asked_sentence(solid, asked, unit));
  ask.faces = sheet.faces_of(asked);
  ask.unit = unit;
  sheet.say(StepKind::Name, name_sentence(solid)).outcome =
      Outcome{Number::whole(static_cast<long long>(solid.faces().size())), std::nullopt};
  convert_givens(sheet, used);
}

// From the number on the sheet to the answer.
Answer end(Worksheet& sheet, const Symbol& asked, const SolutionOptions& options, std::vector<Message> notes) {
  const Number value = sheet.numerals().values().at(sheet.numeral_of(asked).name);
  Answer answer = answered(sheet, asked, value, options);
  answer.notes = std::move(notes);
  write_answer(sheet, asked, answer);
  return answer;
}

Failure<Message> no_formula_for(const solids::Solid& solid, const Symbol& measure) {
  return failure(
      message("no formula leads from what is given to the {measure}", {{"measure", Noun{title_of(solid, measure)}}}));
}

std::vector<WrittenLink> write_links(Worksheet& sheet, const std::vector<Link>& links) {
  std::vector<WrittenLink> written;
  for (const Link& link : links) {
    const std::size_t first = sheet.steps().size();
    write_link(sheet, link);
    written.push_back({&link, first, sheet.steps().size()});
  }
  return written;
}

Result<Solution, Message> by_formula(const solids::Solid& solid, const Symbol& asked, const std::string& name,
                                     const SolutionOptions& options) {
  const std::vector<Link> links = chain(solid.statement(), given_names(solid, asked), {asked});
  if (links.empty()) {
    return no_formula_for(solid, asked);
  }
  Worksheet sheet(solid);
  const std::vector<Symbol> used = givens_used(solid, links);
  begin(sheet, asked, used, options);
  const std::size_t head = sheet.steps().size();
  const std::vector<WrittenLink> written = write_links(sheet, links);
  const std::size_t worked = sheet.steps().size();
  Answer answer = end(sheet, asked, options, notes_on(solid, used, links));
  write_check(sheet, links.back());
  Board board;
  if (options.notation) {
    BoardPage page(sheet, *options.notation);
    write_board_head(page, asked, used, head);
    write_board_formula(page, written, asked);
    write_board_end(page, worked);
    board = std::move(page).finished();
  }
  return std::move(sheet).finished(name, title_of(solid, asked), std::move(answer), std::move(board));
}

void push_new(std::vector<Symbol>& all, const Symbol& one) {
  if (std::find(all.begin(), all.end(), one) == all.end()) {
    all.push_back(one);
  }
}

// "Face 6 is open: it does not count, so 5 faces do."
Message open_sentence(const solids::Solid& solid, const FaceSum& sum) {
  std::vector<FaceId> open;
  for (const solids::Face& face : solid.faces()) {
    if (std::find(sum.faces.begin(), sum.faces.end(), face.id) == sum.faces.end()) {
      open.push_back(face.id);
    }
  }
  return message(
      "{parts:up} {numbers:and} {open:is|are} open, so {open:it does|they do} not count. {count} of the {all} "
      "{part:s} count.",
      {{"parts", message("{part#open}", {{"part", Noun{solid.part()}}, {"open", open.size()}})},
       {"part", Noun{solid.part()}},
       {"open", open.size()},
       {"numbers", face_numbers(open)},
       {"count", sum.faces.size()},
       {"all", solid.faces().size()}});
}

Result<Solution, Message> face_by_face(const solids::Solid& solid, const Symbol& named, const std::string& name,
                                       const SolutionOptions& options) {
  const FaceSum sum = faces_added_up(solid, named, options.open);
  const Symbol& asked = sum.asked;
  if (sum.faces.empty()) {
    return failure(message("the {measure} is not a sum of faces", {{"measure", Noun{title_of(solid, named)}}}));
  }
  std::vector<Symbol> letters;
  for (const FaceId face : sum.faces) {
    for (const Symbol& letter : algebra::symbols_of(solid.faces()[face].work)) {
      push_new(letters, letter);
    }
  }
  const std::set<std::string> known = given_names(solid, asked);
  const std::vector<Link> links = chain(solid.statement(), known, letters);
  std::vector<Symbol> used = givens_used(solid, links);
  for (const Symbol& letter : letters) {
    if (known.count(letter.name) != 0) {
      push_new(used, letter);
    } else if (std::none_of(links.begin(), links.end(), [&](const Link& link) { return link.unknown == letter; })) {
      return no_formula_for(solid, letter);
    }
  }
  Worksheet sheet(solid);
  begin(sheet, asked, used, options);
  if (!(asked == named)) {
    sheet.say(StepKind::Name, open_sentence(solid, sum)).faces = sum.faces;
  }
  const std::size_t head = sheet.steps().size();
  const std::vector<WrittenLink> written = write_links(sheet, links);
  const std::vector<WrittenFaces> faces = write_faces(sheet, sum);
  const std::size_t worked = sheet.steps().size();
  Answer answer = end(sheet, asked, options, notes_on(solid, used, links));
  Board board;
  if (options.notation) {
    BoardPage page(sheet, *options.notation);
    write_board_head(page, asked, used, head);
    for (const WrittenLink& link : written) {
      write_board_part(page, link);
    }
    write_board_faces(page, faces, worked);
    write_board_end(page, worked);
    board = std::move(page).finished();
  }
  return std::move(sheet).finished(name, title_of(solid, asked), std::move(answer), std::move(board));
}

}  // namespace

Result<Solution, Message> worked_solution(const solids::Solid& solid, const std::string& asked,
                                          const SolutionOptions& options) {
  const std::optional<Symbol> measure = measure_named(solid, asked);
  if (!measure) {
    return failure(
        message("{solid:a} has no measure \"{measure}\"", {{"solid", Noun{solid.name()}}, {"measure", asked}}));
  }
  if (options.unit && options.unit->dimension() != measure->dimension) {
    return failure(message("the {measure} is not measured in {unit}",
                           {{"measure", Noun{title_of(solid, *measure)}}, {"unit", options.unit->text()}}));
  }
  const bool some_do_not_count = !(faces_added_up(solid, *measure, options.open).asked == *measure);
  if (solid.is_given(*measure) && !some_do_not_count) {
    return failure(
        message("the {measure} is given, so there is nothing to find", {{"measure", Noun{title_of(solid, *measure)}}}));
  }
  return options.route == Route::FaceByFace || some_do_not_count ? face_by_face(solid, *measure, asked, options)
                                                                 : by_formula(solid, *measure, asked, options);
}

}  // namespace fw::reasoning
