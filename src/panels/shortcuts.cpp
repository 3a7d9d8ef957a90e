#include "panels/frame.hpp"
#include "panels/ids.hpp"
#include "tasks/word_problems/word_problem.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

/// What a key does is seen: the page that it works on comes to the front first.
void show_page_of_mode(const Model& model, Commands& out) {
  if (model.state.mode == Mode::Work && model.view.work_panel != WorkPanel::Steps) {
    out.push_back(ShowWorkPanel{WorkPanel::Steps});
  } else if (model.state.mode == Mode::Explore && model.view.panel != SidePanel::Faces) {
    out.push_back(ShowPanel{SidePanel::Faces});
  }
}

void go_on(const Model& model, Commands& out) {
  show_page_of_mode(model, out);
  if (model.state.mode == Mode::Work) {
    out.push_back(StepWork{1});
  } else if (model.state.mode == Mode::Explore) {
    out.push_back(StepLesson{1});
  } else {
    out.push_back(StepQuiz{1});
  }
}

void go_back(const Model& model, Commands& out) {
  show_page_of_mode(model, out);
  if (model.state.mode == Mode::Work) {
    out.push_back(StepWork{-1});
  } else if (model.state.mode == Mode::Explore) {
    out.push_back(StepLesson{-1});
  } else {
    out.push_back(StepQuiz{-1});
  }
}

/// Home and End.
void go_far(const Model& model, int by, Commands& out) {
  switch (model.state.mode) {
    case Mode::Explore:
      out.push_back(StepProblem{by});
      break;
    case Mode::Work:
      out.push_back(by < 0 ? Command(SelectStep{0}) : Command(LastStep{}));
      break;
    case Mode::Quiz:
      out.push_back(StepItem{by});
      break;
  }
}

/// Presenter remotes send PgUp, PgDn, a period, and F5 and Esc in turn.
void remote_keys(Ui& ui, const Model& model, Commands& out) {
  if (model.view.print.shown) {
    for (const auto& [key, by] : {std::pair{Key::PageDown, 1}, std::pair{Key::PageUp, -1}}) {
      if (ui.shortcut(key)) {
        out.push_back(TurnPage{by});
      }
    }
  }
  if (ui.shortcut(Key::PageDown) || ui.shortcut(Key::Right) || ui.shortcut(Key::Space)) {
    go_on(model, out);
  }
  if (ui.shortcut(Key::PageUp) || ui.shortcut(Key::Left) || ui.shortcut(Key::Backspace)) {
    go_back(model, out);
  }
  if (ui.shortcut(Key::F5)) {
    out.push_back(SetPresenting{!model.view.presenting});
  }
  if (ui.shortcut(Key::Period)) {
    out.push_back(SetBlank{true});
  }
}

/// Esc closes what is open, the topmost first, and never changes the state.
void escape(Ui& ui, const Model& model, Commands& out) {
  if (!ui.shortcut(Key::Escape)) {
    return;
  }
  if (model.view.keys_shown) {
    out.push_back(ShowKeys{false});
  } else if (model.view.print.shown) {
    out.push_back(ShowPrint{false});
  } else if (model.view.progress.shown) {
    out.push_back(ShowProgress{false});
  } else if (model.view.notice) {
    out.push_back(DismissNotice{});
  } else if (model.view.dragged) {
    out.push_back(DragFace{std::nullopt});
  } else if (model.state.mode != Mode::Explore && model.view.pointed) {
    out.push_back(PointNumber{std::nullopt});
  } else if (model.state.mode != Mode::Quiz && model.state.desk().picked) {
    out.push_back(PickFace{std::nullopt});
  } else if (model.view.presenting) {
    out.push_back(SetPresenting{false});
  }
}

void letters(Ui& ui, const Model& model, Commands& out) {
  const bool explores = model.state.mode == Mode::Explore;
  const bool has_desk = model.state.mode != Mode::Quiz;
  if (ui.shortcut(Key::B)) {
    out.push_back(SetBlank{true});
  }
  if (ui.shortcut(Key::U)) {
    out.push_back(StepFold{1});
  }
  if (ui.shortcut(Key::F)) {
    out.push_back(StepFold{-1});
  }
  if (ui.shortcut(Key::P)) {
    const bool moving = model.view.motion != Motion::Still;
    out.push_back(PlayFold{moving ? Motion::Still : (model.view.fold < 0.5 ? Motion::Opening : Motion::Closing)});
  }
  if (has_desk && ui.shortcut(Key::K)) {
    out.push_back(ShowHiddenNumbers{!model.view.hidden_numbers});
  }
  if (has_desk && ui.shortcut(Key::N)) {
    out.push_back(StepNet{1});
  }
  if (has_desk && ui.shortcut(Key::N, with_shift)) {
    out.push_back(StepNet{-1});
  }
  if (explores && ui.shortcut(Key::H)) {
    out.push_back(MovePicked{});
  }
  if (explores && ui.shortcut(Key::V)) {
    show_page_of_mode(model, out);
    out.push_back(ShowVolume{!model.state.desk().volume_shown});
  }
  if (explores && ui.shortcut(Key::T)) {
    show_page_of_mode(model, out);
    out.push_back(ShowTotal{!model.state.desk().total_shown});
  }
}

void work_letters(Ui& ui, const Model& model, const Derived& derived, Commands& out) {
  const Work& work = model.state.desk().work;
  const auto shown_here = [&](Key key, Modifiers modifiers = no_modifiers) {
    const bool pressed = ui.shortcut(key, modifiers);
    if (pressed) {
      show_page_of_mode(model, out);
    }
    return pressed;
  };
  if (shown_here(Key::W)) {
    out.push_back(StepNumber{1});
  }
  if (shown_here(Key::W, with_shift)) {
    out.push_back(StepNumber{-1});
  }
  if (derived.worked && shown_here(Key::D)) {
    out.push_back(SetDetail{shows_board(model, *derived.worked) ? Detail::EveryStep : Detail::Board});
  }
  if (derived.worked && shown_here(Key::O)) {
    out.push_back(OpenLine{progressed(model, *derived.worked).present});
  }
  if (shown_here(Key::G)) {
    const bool gap_here = work.fade == Fade::ThisStep && work.faded == work.present;
    out.push_back(SetFade{gap_here ? Fade::None : Fade::ThisStep});
  }
  if (shown_here(Key::A)) {
    out.push_back(ShowSteps{true});
  }
  if (shown_here(Key::A, with_shift)) {
    out.push_back(ShowSteps{false});
  }
}

/// Cover, fill and edge where they are to be decided, else the faces.
void work_digits(Ui& ui, const Model& model, Commands& out) {
  const Desk& desk = model.state.desk();
  const bool is_word_problem = practice::task_as<tasks::WordProblem>(model.state.current()) != nullptr;
  const bool decides = is_word_problem && !desk.work.decided;
  constexpr reasoning::Purpose purposes[] = {reasoning::Purpose::Cover, reasoning::Purpose::Fill,
                                             reasoning::Purpose::Edge};
  for (int digit = 1; digit <= 9; ++digit) {
    const auto index = static_cast<std::size_t>(digit - 1);
    if (!ui.shortcut(static_cast<Key>(static_cast<int>(Key::Digit0) + digit))) {
      continue;
    }
    if (decides && index < std::size(purposes)) {
      out.push_back(Decide{purposes[index]});
    } else if (!decides && index < desk.solid.faces().size()) {
      point_face(desk, FaceId::at(index), out);
    }
  }
}

/// Options to choose from, to count hands for, or, once the answer is out, to look at.
void option_letters(Ui& ui, Commands& out) {
  constexpr std::size_t most_options = 6;
  for (std::size_t i = 0; i < most_options; ++i) {
    if (ui.shortcut(static_cast<Key>(static_cast<int>(Key::A) + static_cast<int>(i)), no_modifiers, KeyTaker::Option)) {
      out.push_back(AnswerOption{i});
    }
  }
}

void digits(Ui& ui, const Model& model, Commands& out) {
  for (int digit = 1; digit <= 9; ++digit) {
    const auto key = static_cast<Key>(static_cast<int>(Key::Digit0) + digit);
    const auto index = static_cast<std::size_t>(digit - 1);
    if (ui.shortcut(key) && index < model.state.desk().solid.faces().size()) {
      show_page_of_mode(model, out);
      choose_face(model.state.desk(), FaceId::at(index), out);
    }
  }
}

void view_keys(Ui& ui, Commands& out) {
  if (ui.shortcut(Key::Left, with_shift)) {
    out.push_back(Orbit{turn_step_rad, 0});
  }
  if (ui.shortcut(Key::Right, with_shift)) {
    out.push_back(Orbit{-turn_step_rad, 0});
  }
  if (ui.shortcut(Key::Up, with_shift)) {
    out.push_back(Orbit{0, turn_step_rad});
  }
  if (ui.shortcut(Key::Down, with_shift)) {
    out.push_back(Orbit{0, -turn_step_rad});
  }
  if (ui.shortcut(Key::Equal) || ui.shortcut(Key::Equal, with_shift) || ui.shortcut(Key::PadAdd)) {
    out.push_back(Zoom{zoom_step});
  }
  if (ui.shortcut(Key::Minus) || ui.shortcut(Key::PadSubtract)) {
    out.push_back(Zoom{1 / zoom_step});
  }
  if (ui.shortcut(Key::Digit0)) {
    out.push_back(FitView{});
  }
}

}  // namespace

KeyScene key_scene(const Model& model, const Derived& derived) {
  const State& state = model.state;
  if (model.view.blank) {
    return KeyScene::Blank;
  }
  if (!state.in_item()) {
    return KeyScene::Program;
  }
  if (state.quiz.setup.audience == Audience::Class) {
    return state.quiz.work().stage == ClassStage::Options ? KeyScene::Options : KeyScene::Program;
  }
  if (!state.is_asking()) {
    return KeyScene::Answered;
  }
  const AnswerForm form = derived.item->form;
  const bool has_options = is_chosen(form) || (is_name(form) && state.quiz.style == AnswerStyle::Options);
  return has_options ? KeyScene::Choosing : KeyScene::Answered;
}

void shortcuts(Ui& ui, const Model& model, const Derived& derived, Commands& out) {
  if (model.view.blank) {
    // Whatever key the remote sends brings the picture back, and does nothing else.
    for (const Key key : {Key::B, Key::Period, Key::Escape, Key::Space, Key::Enter, Key::PageUp, Key::PageDown,
                          Key::Left, Key::Right, Key::F5}) {
      if (ui.shortcut(key)) {
        out.push_back(SetBlank{false});
        return;
      }
    }
    return;
  }
  remote_keys(ui, model, out);
  escape(ui, model, out);
  view_keys(ui, out);
  if (ui.shortcut(Key::Z, with_control)) {
    out.push_back(Undo{});
  }
  if (ui.shortcut(Key::Y, with_control)) {
    out.push_back(Redo{});
  }
  if (ui.shortcut(Key::P, with_control)) {
    out.push_back(ShowPrint{true});
  }
  for (const Mode mode : {Mode::Explore, Mode::Work, Mode::Quiz}) {
    if (ui.shortcut(static_cast<Key>(static_cast<int>(Key::Digit1) + static_cast<int>(mode)), with_control)) {
      out.push_back(SetMode{mode});
    }
  }
  const bool works = model.state.mode == Mode::Work;
  if (ui.shortcut(Key::Home)) {
    go_far(model, -1, out);
  }
  if (ui.shortcut(Key::End)) {
    go_far(model, 1, out);
  }
  if (ui.shortcut(Key::F1)) {
    out.push_back(ShowKeys{!model.view.keys_shown});
  }
  if (ui.shortcut(Key::F11)) {
    out.push_back(SetFullScreen{!model.view.settings.full_screen});
  }
  if (model.view.settings.letter_keys) {
    option_letters(ui, out);
    letters(ui, model, out);
    if (model.state.mode == Mode::Explore) {
      digits(ui, model, out);
    } else if (works) {
      work_letters(ui, model, derived, out);
      work_digits(ui, model, out);
    }
  }
}

}  // namespace fw::panels
