#pragma once

#include <string>

#include "state/apply.hpp"

namespace fw::state::handlers {

// One function a command, in a file a topic; each changes the model and returns what undo would be called
// ("count face 3"), or an empty text when there is nothing to undo.

std::string on(Model& model, const OpenProblem& command);
std::string on(Model& model, const StepProblem& command);
std::string on(Model& model, const SetMode& command);
std::string on(Model& model, const StepLesson& command);

std::string on(Model& model, const PickFace& command);
std::string on(Model& model, const StepPicked& command);
std::string on(Model& model, const CountFace& command);
std::string on(Model& model, const CountNext& command);
std::string on(Model& model, const UncountLast& command);
std::string on(Model& model, const ClearCount& command);
std::string on(Model& model, const SetGrouping& command);
std::string on(Model& model, const ShowTotal& command);
std::string on(Model& model, const ShowVolume& command);

std::string on(Model& model, const SetFold& command);
std::string on(Model& model, const StepFold& command);
std::string on(Model& model, const PlayFold& command);
std::string on(Model& model, const SetFoldOrder& command);
std::string on(Model& model, const StepNet& command);
std::string on(Model& model, const MoveFace& command);
std::string on(Model& model, const MovePicked& command);
std::string on(Model& model, const DragFace& command);
std::string on(Model& model, const Tick& command);

std::string on(Model& model, const SetMeasure& command);
std::string on(Model& model, const SetUnit& command);
std::string on(Model& model, const PutOnBench& command);
std::string on(Model& model, const ResetProblem& command);
std::string on(Model& model, const TakeRemedy& command);
std::string on(Model& model, const DismissNotice& command);

std::string on(Model& model, const SetAudience& command);
std::string on(Model& model, const SetQuizSource& command);
std::string on(Model& model, const SetQuizLevel& command);
std::string on(Model& model, const ToggleQuizType& command);
std::string on(Model& model, const NewNumbers& command);
std::string on(Model& model, const StartQuiz& command);
std::string on(Model& model, const EndQuiz& command);
std::string on(Model& model, const AskMissedAgain& command);
std::string on(Model& model, const CloseResults& command);

std::string on(Model& model, const StepItem& command);
std::string on(Model& model, const StepQuiz& command);
std::string on(Model& model, const SetAnswerStyle& command);
std::string on(Model& model, const AnswerTyped& command);
std::string on(Model& model, const AnswerOption& command);
std::string on(Model& model, const ShowHint& command);
std::string on(Model& model, const RevealAnswer& command);
std::string on(Model& model, const TryNewNumbers& command);
std::string on(Model& model, const SetHands& command);
std::string on(Model& model, const StepHands& command);

std::string on(Model& model, const StepWork& command);
std::string on(Model& model, const SelectStep& command);
std::string on(Model& model, const ShowSteps& command);
std::string on(Model& model, const LastStep& command);
std::string on(Model& model, const SetFade& command);
std::string on(Model& model, const FillBlank& command);
std::string on(Model& model, const ShowBlank& command);
std::string on(Model& model, const SetRoute& command);
std::string on(Model& model, const SetDetail& command);
std::string on(Model& model, const SetNotation& command);
std::string on(Model& model, const OpenLine& command);
std::string on(Model& model, const AskFor& command);
std::string on(Model& model, const Decide& command);
std::string on(Model& model, const ShowDecision& command);
std::string on(Model& model, const PointNumber& command);
std::string on(Model& model, const StepNumber& command);
std::string on(Model& model, const ShowWorkPanel& command);

std::string on(Model& model, const Orbit& command);
std::string on(Model& model, const Zoom& command);
std::string on(Model& model, const FitView& command);
std::string on(Model& model, const ShowPanel& command);
std::string on(Model& model, const SetTheme& command);
std::string on(Model& model, const SetReducedMotion& command);
std::string on(Model& model, const SetPlaySpeed& command);
std::string on(Model& model, const SetLetterKeys& command);
std::string on(Model& model, const SetFullScreen& command);
std::string on(Model& model, const SetPresenting& command);
std::string on(Model& model, const SetRail& command);
std::string on(Model& model, const SetBlank& command);
std::string on(Model& model, const ShowKeys& command);
std::string on(Model& model, const ShowPrompt& command);
std::string on(Model& model, const ShowHiddenNumbers& command);
std::string on(Model& model, const Hover& command);

std::string on(Model& model, const ShowProgress& command);
std::string on(Model& model, const ExportProgress& command);
std::string on(Model& model, const EraseProgress& command);
std::string on(Model& model, const TakeProgress& command);
std::string on(Model& model, const TakeFileNews& command);
std::string on(Model& model, const CloseFileNews& command);

std::string on(Model& model, const ShowPrint& command);
std::string on(Model& model, const SetPrint& command);
std::string on(Model& model, const TurnPage& command);
std::string on(Model& model, const SetPrintPlace& command);
std::string on(Model& model, const SavePrint& command);
std::string on(Model& model, const SaveAsPage& command);
std::string on(Model& model, const StopPrint& command);
std::string on(Model& model, const TakePrinted& command);
std::string on(Model& model, const TakeSaved& command);

std::string on(Model& model, const Undo& command);
std::string on(Model& model, const Redo& command);

/// The desk of the problem in view, to be changed.
[[nodiscard]] Desk& desk(Model& model);
/// Whether the solid on the desk has this face.
[[nodiscard]] bool exists(const Desk& desk, FaceId face);
/// What was done with the item in view, to be changed. Requires: one is in view.
[[nodiscard]] ItemWork& item_work(Model& model);
/// Lays the desk of the item in view, and looks at it from the front.
void come_to_item(Model& model);
/// The answer is out: card folds up.
void finish_item(Model& model);
/// Card that lies there folds up from the start, at once where motion is reduced; nothing where none does.
void fold_card(Model& model);
/// Shows the worked solution, its step that a wrong answer points to marked by being the present one.
void show_solution(Model& model);
/// Stages of a class: forward or back by one. Returns what undo would be called.
std::string step_class(Model& model, int by);
/// An option of a class: another hand for it or, once the answer is out, the one that is spoken of.
std::string choose_in_class(Model& model, std::size_t option);
/// Lays a desk for the problem in view if none is there, and brings the view back to the closed solid.
void come_to_problem(Model& model);
/// The quarter, or the hinge, that the fold stands at or just passed, stepped by one.
[[nodiscard]] double stepped_fold(double fold, int by, std::size_t steps);
/// How many steps a fold is stepped in: quarters, or one a hinge.
[[nodiscard]] std::size_t fold_steps(const Model& model);

}  // namespace fw::state::handlers
