#pragma once

#include <memory>
#include <string>
#include <type_traits>
#include <vector>

#include "state/view.hpp"
#include "units/unit.hpp"

namespace fw::state {

struct Model;

// Every click, key and script line is one of these, named by intent.

// The lesson
struct OpenProblem {
  std::size_t index;
};
struct StepProblem {
  int by;
};
struct SetMode {
  Mode mode;
};
struct StepLesson {
  int by;
};  ///< in Explore: what a class does next, or did last; see lesson_steps.hpp

// Counting
struct PickFace {
  std::optional<FaceId> face;
};  ///< lifts a face out, or lays it back
struct StepPicked {
  int by;
};
struct CountFace {
  FaceId face;
};  ///< picks it too; counting twice is kept and shown
struct CountNext {};
struct UncountLast {};
struct ClearCount {};
struct SetGrouping {
  reasoning::Grouping grouping;
};
struct ShowTotal {
  bool shown;
};
struct ShowVolume {
  bool shown;
};

// The net
struct SetFold {
  double amount;
};
struct StepFold {
  int by;
};  ///< to the next quarter, or the next hinge
struct PlayFold {
  Motion motion;
};  ///< Still stops it where it is
struct SetFoldOrder {
  nets::FoldOrder order;
};
struct StepNet {
  int by;
};
struct MoveFace {
  FaceId face;
  EdgeId edge;
};
struct MovePicked {};  ///< the picked face to its next possible hinge
struct DragFace {
  std::optional<FaceId> face;
  bool missed = false;  ///< let go where it can't hang
};                      ///< takes hold of a face, or lets go of it

// Measures
struct SetMeasure {
  std::string field;
  std::string text;
  bool by_slider = false;
};  ///< field: EditableMeasure::field
struct SetUnit {
  units::Unit unit;
};
struct PutOnBench {
  solids::Description description;
};
struct ResetProblem {};  ///< back to the lesson's numbers
struct TakeRemedy {};    ///< the value that the notice offers
struct DismissNotice {};

// The quiz: its start page
struct SetAudience {
  Audience audience;
};
struct SetQuizSource {
  QuizSource source;
};
struct SetQuizLevel {
  int level;
};
struct ToggleQuizType {
  std::string key;
};  ///< empty: every type, mixed
struct NewNumbers {};
struct StartQuiz {};
struct EndQuiz {};
struct AskMissedAgain {};  ///< a set of what was missed in the set just gone through
struct CloseResults {};

// The quiz: an item
struct StepItem {
  int by;
};  ///< past the last one to the start page
struct StepQuiz {
  int by;
};  ///< what a remote does: a hint, the solution, the next item; or question, options, answer
struct SetAnswerStyle {
  AnswerStyle style;
};
struct AnswerTyped {
  std::string text;
};
struct AnswerOption {
  std::size_t index;
};
struct ShowHint {};
struct RevealAnswer {};   ///< with its worked solution
struct TryNewNumbers {};  ///< the same kind of problem in the place of one that is done
struct SetHands {
  std::size_t option;
  std::string text;
};
struct StepHands {
  std::size_t option;
  int by;
};

// Working a problem out
struct StepWork {
  int by;
};  ///< forward reveals a step, or the number of its gap first; back hides the last one
struct SelectStep {
  std::size_t step;
};  ///< of those that are shown
struct ShowSteps {
  bool all;
};                   ///< or none
struct LastStep {};  ///< shows all and goes to the end
struct SetFade {
  Fade fade;
};  ///< ThisStep is the present one
struct FillBlank {
  std::size_t step;
  std::string text;
};
struct ShowBlank {
  std::size_t step;
};
struct SetRoute {
  RouteChoice route;
};
struct AskFor {
  std::string measure;
  std::optional<std::string> instead;
};  ///< makes the measure the unknown, and gives another in its place
struct Decide {
  reasoning::Purpose purpose;
};
struct ShowDecision {};
struct SetDetail {
  Detail detail;
};
struct SetNotation {
  algebra::ClassNotation notation;
};
struct OpenLine {
  std::size_t line;
};  ///< of the board, into its steps; closes one that is open
struct PointNumber {
  std::optional<NumberPlace> place;
};
struct StepNumber {
  int by;
};  ///< to the next number of the present line, and past the last one to none
struct ShowWorkPanel {
  WorkPanel panel;
};

// The view
struct Orbit {
  double turn_rad;
  double tilt_rad;
};
struct Zoom {
  double factor;
};
struct FitView {};
struct ShowPanel {
  SidePanel panel;
};
struct SetTheme {
  ThemeName theme;
};
struct SetReducedMotion {
  bool on;
};
struct SetPlaySpeed {
  PlaySpeed speed;
};
struct SetLetterKeys {
  bool on;
};
struct SetFullScreen {
  bool on;
};
struct SetPresenting {
  bool on;
};
struct SetRail {
  bool open;
};
struct SetBlank {
  bool on;
};
struct ShowKeys {
  bool on;
};
struct ShowPrompt {
  bool on;
};
struct ShowHiddenNumbers {
  bool on;
};  ///< of faces out of sight
struct Hover {
  std::optional<FaceId> face;
};
struct Tick {
  double seconds;
};  ///< time passes

// What is kept of practice
struct ShowProgress {
  bool on;
};
struct ExportProgress {};
struct EraseProgress {
  bool sure;
};  ///< asks; being sure counts only when it was asked
struct TakeProgress {
  std::shared_ptr<const practice::Progress> kept;
  int today;
  std::string message;
};  ///< from outside: what is kept now, and what became of an export or an erasing
struct TakeFileNews {
  FileNews news;
};                        ///< from outside
struct CloseFileNews {};  ///< what was set aside is read; what is not being saved stays

// Printing
struct ShowPrint {
  bool on;
};
struct SetPrint {
  PrintChoices choices;
};
struct TurnPage {
  int by;
};
struct SetPrintPlace {
  std::string text;
};
struct SavePrint {};
struct SaveAsPage {};  ///< the lesson, for browsers
struct StopPrint {};
struct TakePrinted {
  std::shared_ptr<const paper::Printed> printed;  ///< none: they are still being made
  std::size_t done, of;
};  ///< from outside: the pages, or how far they are
struct TakeSaved {
  std::string message;
  bool is_refused;
  std::string folder;
};  ///< from outside: what became of saving, and where the next file goes

struct Undo {};
struct Redo {};

template <class... Intent>
struct IntentList {};
/// All that a command can be: a new intent is named here. A command of any other does not link, and the tests give
/// every one of them.
using Intents =
    IntentList<OpenProblem, StepProblem, SetMode, StepLesson, PickFace, StepPicked, CountFace, CountNext, UncountLast,
               ClearCount, SetGrouping, ShowTotal, ShowVolume, SetFold, StepFold, PlayFold, SetFoldOrder, StepNet,
               MoveFace, MovePicked, DragFace, SetMeasure, SetUnit, PutOnBench, ResetProblem, TakeRemedy, DismissNotice,
               SetAudience, SetQuizSource, SetQuizLevel, ToggleQuizType, NewNumbers, StartQuiz, EndQuiz, AskMissedAgain,
               CloseResults, StepItem, StepQuiz, SetAnswerStyle, AnswerTyped, AnswerOption, ShowHint, RevealAnswer,
               TryNewNumbers, SetHands, StepHands, StepWork, SelectStep, ShowSteps, LastStep, SetFade, FillBlank,
               ShowBlank, SetRoute, AskFor, Decide, ShowDecision, SetDetail, SetNotation, OpenLine, PointNumber,
               StepNumber, ShowWorkPanel, Orbit, Zoom, FitView, ShowPanel, SetTheme, SetReducedMotion, SetPlaySpeed,
               SetLetterKeys, SetFullScreen, SetPresenting, SetRail, SetBlank, ShowKeys, ShowPrompt, ShowHiddenNumbers,
               Hover, Tick, ShowProgress, ExportProgress, EraseProgress, TakeProgress, TakeFileNews, CloseFileNews,
               ShowPrint, SetPrint, TurnPage, SetPrintPlace, SavePrint, SaveAsPage, StopPrint, TakePrinted, TakeSaved,
               Undo, Redo>;

/// One of the intents above, whichever. A class and no std::variant, which took seconds to compile wherever a command
/// was made: what is done with an intent is compiled once, in command.cpp.
class Command {
 public:
  /// Any of the intents listed above.
  template <class Intent>
  requires(!std::is_same_v<Intent, Command>) Command(const Intent& intent) : held_(held(intent)) {}

  /// The intent, if it is this one; else null.
  template <class Intent>
  [[nodiscard]] const Intent* as() const {
    return held_->kind() == &kind_of<Intent> ? static_cast<const Intent*>(held_->intent()) : nullptr;
  }
  /// Changes the model. Returns what undo would be called, or an empty text when there is nothing to undo.
  std::string change(Model& model) const { return held_->change(model); }

 private:
  struct Held {
    virtual ~Held() = default;
    [[nodiscard]] virtual const void* kind() const = 0;
    [[nodiscard]] virtual const void* intent() const = 0;
    virtual std::string change(Model& model) const = 0;
  };
  template <class Intent>
  struct Holding;
  template <class Intent>
  static constexpr char kind_of = 0;
  template <class Intent>
  [[nodiscard]] static std::shared_ptr<const Held> held(const Intent& intent);
  friend struct EveryIntent;

  std::shared_ptr<const Held> held_;
};

/// What the user wants, in order.
using Commands = std::vector<Command>;

}  // namespace fw::state
