#pragma once

#include <algorithm>
#include <string>
#include <type_traits>
#include <vector>

#include "reasoning/measures.hpp"
#include "solids/catalog.hpp"
#include "state/apply.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/quiz/quiz_help.hpp"

// Any command, with arguments that a user could give and with some that nobody could. Every intent of the list in
// command.hpp has its arguments here: one that is left out does not compile.
namespace fw::state::test {

/// Numbers to choose by, from a test that can make them smaller.
class Choices {
 public:
  explicit Choices(std::vector<unsigned> numbers) : numbers_(std::move(numbers)) {}
  unsigned next() { return numbers_.empty() ? 0 : numbers_[used_++ % numbers_.size()]; }
  std::size_t below(std::size_t end) { return next() % end; }
  bool yes() { return next() % 2 == 1; }
  int step() { return yes() ? -1 : 1; }
  /// Now and then one past the last.
  std::size_t index(std::size_t count) { return below(count + 1); }
  FaceId face(const Model& model) { return FaceId::at(index(model.state.desk().solid.faces().size())); }
  std::optional<FaceId> face_or_none(const Model& model) { return yes() ? std::optional(face(model)) : std::nullopt; }
  template <class T>
  T one_of(const std::vector<T>& all) {
    return all[below(all.size())];
  }

 private:
  std::vector<unsigned> numbers_;
  std::size_t used_ = 0;
};

template <class Intent>
struct Of {};

// What carries nothing.
template <class Intent>
requires std::is_empty_v<Intent> Intent any(Of<Intent>, const Model&, Choices&) { return {}; }

// The lesson
inline OpenProblem any(Of<OpenProblem>, const Model& model, Choices& c) { return {c.index(model.state.desks.size())}; }
inline TakeFileNews any(Of<TakeFileNews>, const Model&, Choices& c) {
  return {{c.yes() ? "Your answers are not saved." : "", c.yes(), c.yes() ? "A damaged file was set aside." : ""}};
}
inline StepLesson any(Of<StepLesson>, const Model&, Choices& c) { return {c.step()}; }
inline StepProblem any(Of<StepProblem>, const Model&, Choices& c) { return {c.step()}; }
inline SetMode any(Of<SetMode>, const Model&, Choices& c) { return {static_cast<Mode>(c.below(3))}; }

// Counting
inline PickFace any(Of<PickFace>, const Model& model, Choices& c) { return {c.face_or_none(model)}; }
inline StepPicked any(Of<StepPicked>, const Model&, Choices& c) { return {c.step()}; }
inline CountFace any(Of<CountFace>, const Model& model, Choices& c) { return {c.face(model)}; }
inline SetGrouping any(Of<SetGrouping>, const Model&, Choices& c) {
  return {static_cast<reasoning::Grouping>(c.below(2))};
}
inline ShowTotal any(Of<ShowTotal>, const Model&, Choices& c) { return {c.yes()}; }
inline ShowVolume any(Of<ShowVolume>, const Model&, Choices& c) { return {c.yes()}; }

// The net
inline SetFold any(Of<SetFold>, const Model&, Choices& c) { return {static_cast<double>(c.below(7)) * 0.3 - 0.4}; }
inline StepFold any(Of<StepFold>, const Model&, Choices& c) { return {c.step()}; }
inline PlayFold any(Of<PlayFold>, const Model&, Choices& c) { return {static_cast<Motion>(c.below(3))}; }
inline SetFoldOrder any(Of<SetFoldOrder>, const Model&, Choices& c) {
  return {static_cast<nets::FoldOrder>(c.below(2))};
}
inline StepNet any(Of<StepNet>, const Model&, Choices& c) { return {c.step()}; }
inline MoveFace any(Of<MoveFace>, const Model& model, Choices& c) {
  return {c.face(model), EdgeId::at(c.index(model.state.desk().solid.body().edge_count()))};
}
inline DragFace any(Of<DragFace>, const Model& model, Choices& c) { return {c.face_or_none(model)}; }
inline Tick any(Of<Tick>, const Model&, Choices& c) { return {0.01 + static_cast<double>(c.below(10)) * 0.2}; }

// Measures
inline SetMeasure any(Of<SetMeasure>, const Model& model, Choices& c) {
  std::vector<std::string> fields{"no_such_field"};
  for (const reasoning::EditableMeasure& measure :
       reasoning::editable_measures(model.state.desk().solid, model.state.current().solid)) {
    fields.insert(fields.begin(), measure.field);
  }
  const std::vector<std::string> texts{"9", "12 cm", "7 1/2 ft", "0.4", "3", "5", "8", "?", "0", "-2", "x"};
  return {c.one_of(fields), c.one_of(texts), c.yes()};
}
inline SetUnit any(Of<SetUnit>, const Model&, Choices& c) { return {c.one_of(units::Unit::lengths())}; }
inline PutOnBench any(Of<PutOnBench>, const Model&, Choices& c) {
  static const std::vector<solids::Description> shelf = solids::shelf();
  return {c.one_of(shelf)};
}

// The quiz
inline SetAudience any(Of<SetAudience>, const Model&, Choices& c) { return {static_cast<Audience>(c.below(2))}; }
inline SetQuizSource any(Of<SetQuizSource>, const Model&, Choices& c) { return {static_cast<QuizSource>(c.below(4))}; }
inline SetQuizLevel any(Of<SetQuizLevel>, const Model&, Choices& c) { return {static_cast<int>(c.below(5))}; }
inline ToggleQuizType any(Of<ToggleQuizType>, const Model&, Choices& c) {
  std::vector<std::string> keys{"", "no-such-type"};
  for (const practice::TypeName& type : tasks::type_names()) {
    keys.push_back(type.key);
  }
  return {c.one_of(keys)};
}
inline StepItem any(Of<StepItem>, const Model&, Choices& c) { return {c.step()}; }
inline StepQuiz any(Of<StepQuiz>, const Model&, Choices& c) { return {c.step()}; }
inline SetAnswerStyle any(Of<SetAnswerStyle>, const Model&, Choices& c) {
  return {static_cast<AnswerStyle>(c.below(2))};
}
inline AnswerTyped any(Of<AnswerTyped>, const Model& model, Choices& c) {
  std::vector<std::string> texts{"12", "cube", "square pyramid", "143 cm²", "yes", "no", "B", "6", "  ", "what?"};
  if (model.state.in_item()) {
    texts.insert(texts.begin(), 3, said(tasks::answer_text(model.state.quiz.item())));  // right more often than not
  }
  return {c.one_of(texts)};
}
inline AnswerOption any(Of<AnswerOption>, const Model&, Choices& c) { return {c.below(6)}; }
inline SetHands any(Of<SetHands>, const Model&, Choices& c) {
  return {c.below(5), c.one_of<std::string>({"12", "0", "999", "1000", "-1", "x", ""})};
}
inline StepHands any(Of<StepHands>, const Model&, Choices& c) { return {c.below(5), c.step()}; }

// Working a problem out
inline StepWork any(Of<StepWork>, const Model&, Choices& c) { return {c.step()}; }
inline SelectStep any(Of<SelectStep>, const Model&, Choices& c) { return {c.below(12)}; }
inline ShowSteps any(Of<ShowSteps>, const Model&, Choices& c) { return {c.yes()}; }
inline SetFade any(Of<SetFade>, const Model&, Choices& c) { return {static_cast<Fade>(c.below(3))}; }
inline FillBlank any(Of<FillBlank>, const Model&, Choices& c) {
  return {c.below(12), c.one_of<std::string>({"12", "6 × 9", "S = 144", "144 cm²", "", "(", "x"})};
}
inline ShowBlank any(Of<ShowBlank>, const Model&, Choices& c) { return {c.below(12)}; }
inline SetRoute any(Of<SetRoute>, const Model&, Choices& c) { return {static_cast<RouteChoice>(c.below(3))}; }
inline AskFor any(Of<AskFor>, const Model& model, Choices& c) {
  std::vector<std::string> names{"surface_area", "volume", "", "no_such_measure"};
  for (const auto& [name, value] : model.state.desk().solid.values()) {
    names.push_back(name);
  }
  return {c.one_of(names), c.yes() ? std::optional(c.one_of(names)) : std::nullopt};
}
inline Decide any(Of<Decide>, const Model&, Choices& c) { return {static_cast<reasoning::Purpose>(c.below(3))}; }
inline SetDetail any(Of<SetDetail>, const Model&, Choices& c) { return {static_cast<Detail>(c.below(2))}; }
inline SetNotation any(Of<SetNotation>, const Model&, Choices& c) {
  algebra::ClassNotation notation;
  for (int i = 0; i < 4; ++i) {
    notation = *algebra::with_word(notation, c.one_of(algebra::notation_words()));
  }
  return {notation};
}
inline OpenLine any(Of<OpenLine>, const Model&, Choices& c) { return {c.below(9)}; }
inline PointNumber any(Of<PointNumber>, const Model&, Choices& c) {
  return {c.yes() ? std::optional(NumberPlace{c.below(12), c.below(6), c.yes()}) : std::nullopt};
}
inline StepNumber any(Of<StepNumber>, const Model&, Choices& c) { return {c.step()}; }
inline ShowWorkPanel any(Of<ShowWorkPanel>, const Model&, Choices& c) { return {static_cast<WorkPanel>(c.below(3))}; }

// The view
inline Orbit any(Of<Orbit>, const Model&, Choices& c) {
  return {c.step() * static_cast<double>(c.below(40)) * 0.3, c.step() * static_cast<double>(c.below(8)) * 0.4};
}
inline Zoom any(Of<Zoom>, const Model&, Choices& c) { return {c.one_of<double>({1.15, 0.5, 3, 100, 0.001, 1})}; }
inline ShowPanel any(Of<ShowPanel>, const Model&, Choices& c) { return {static_cast<SidePanel>(c.below(4))}; }
inline SetTheme any(Of<SetTheme>, const Model&, Choices& c) { return {c.one_of(theme::theme_names())}; }
inline SetReducedMotion any(Of<SetReducedMotion>, const Model&, Choices& c) { return {c.yes()}; }
inline SetPlaySpeed any(Of<SetPlaySpeed>, const Model&, Choices& c) { return {static_cast<PlaySpeed>(c.below(3))}; }
inline SetLetterKeys any(Of<SetLetterKeys>, const Model&, Choices& c) { return {c.yes()}; }
inline SetFullScreen any(Of<SetFullScreen>, const Model&, Choices& c) { return {c.yes()}; }
inline SetPresenting any(Of<SetPresenting>, const Model&, Choices& c) { return {c.yes()}; }
inline SetRail any(Of<SetRail>, const Model&, Choices& c) { return {c.yes()}; }
inline SetBlank any(Of<SetBlank>, const Model&, Choices& c) { return {c.yes()}; }
inline ShowKeys any(Of<ShowKeys>, const Model&, Choices& c) { return {c.yes()}; }
inline ShowHiddenNumbers any(Of<ShowHiddenNumbers>, const Model&, Choices& c) { return {c.yes()}; }
inline ShowPrompt any(Of<ShowPrompt>, const Model&, Choices& c) { return {c.yes()}; }
inline Hover any(Of<Hover>, const Model& model, Choices& c) { return {c.face_or_none(model)}; }

// What is kept of practice
inline ShowProgress any(Of<ShowProgress>, const Model&, Choices& c) { return {c.yes()}; }
inline EraseProgress any(Of<EraseProgress>, const Model&, Choices& c) { return {c.yes()}; }
inline TakeProgress any(Of<TakeProgress>, const Model& model, Choices& c) {
  return {model.view.progress.kept, model.view.progress.today + static_cast<int>(c.below(2)), "taken"};
}

// Printing
inline ShowPrint any(Of<ShowPrint>, const Model&, Choices& c) { return {c.yes()}; }
inline SetPrint any(Of<SetPrint>, const Model&, Choices& c) {
  PrintChoices choices;
  choices.sheet = c.one_of<std::string>({"handout", "nets", "key", "test", "no-such-sheet"});
  choices.paper = c.one_of<std::string>({"", "a4", "letter", "no-such-paper"});
  choices.only_this = c.yes();
  choices.is_large = c.yes();
  choices.versions = c.below(10);
  return {choices};
}
inline TurnPage any(Of<TurnPage>, const Model&, Choices& c) { return {c.step() * static_cast<int>(c.below(4))}; }
inline SetPrintPlace any(Of<SetPrintPlace>, const Model&, Choices& c) {
  return {c.one_of<std::string>({"", "x", "home/Documents/x.pdf", "/nowhere/x.pdf"})};
}
inline TakePrinted any(Of<TakePrinted>, const Model&, Choices& c) {
  auto printed = std::make_shared<paper::Printed>();
  printed->pages.resize(c.below(4));
  return {c.yes() ? printed : nullptr, c.below(3), c.below(5)};
}
inline TakeSaved any(Of<TakeSaved>, const Model&, Choices& c) { return {c.yes() ? "saved" : "", c.yes(), "home"}; }

/// A way to make the command of one intent.
struct Maker {
  std::string name;
  Command (*make)(const Model& model, Choices& choices);
};

template <class Intent>
std::string name_of_intent() {
  const std::string whole = __PRETTY_FUNCTION__;  // "... [with Intent = fw::state::Hover; ...]", "... [Intent = ...]"
  const std::size_t begin = whole.find("Intent = ") + 9;
  const std::string name = whole.substr(begin, whole.find_first_of(";]", begin) - begin);
  return name.substr(name.rfind(':') + 1);
}

template <class... Intent>
std::vector<Maker> makers_of(IntentList<Intent...>) {
  return {Maker{name_of_intent<Intent>(),
                [](const Model& model, Choices& choices) { return Command(any(Of<Intent>{}, model, choices)); }}...};
}

/// One for every intent there is.
inline const std::vector<Maker>& makers() {
  static const std::vector<Maker> all = makers_of(Intents{});
  return all;
}

}  // namespace fw::state::test
