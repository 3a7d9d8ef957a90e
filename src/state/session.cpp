#include "state/session.hpp"

#include "state/keeping.hpp"
#include "state/sharing.hpp"

namespace fw::state {
namespace {
constexpr const char* settings_file = "/settings.json";
constexpr const char* place_file = "/place.json";

Session* speaks_last = nullptr;

void add_sentence(std::string& text, const std::string& sentence) {
  text += (text.empty() || sentence.empty() ? "" : " ") + sentence;
}
}  // namespace

Session::Session(platform::Files& files, lessons::Lesson lesson, std::string path, int (*today)())
    : files_(files), today_(today), progress_(files), printer_(files) {
  State fresh = opened(std::move(lesson), std::move(path));
  const auto folder = files_.config_folder();
  if (!folder) {
    cannot_save(folder.error().message);
    model_.state = std::move(fresh);
  } else {
    folder_ = folder.value();
    load(folder_, std::move(fresh));
  }
  model_.view.fold = lies_flat(model_.state) ? 1 : 0;
  if (const std::vector<std::string>& left_out = model_.state.lesson->left_out; !left_out.empty()) {
    const words::Message text = words::message(
        "{count:Problem|Problems} {ids:and} {count:has a mistake and is|have mistakes and are} left out. Run "
        "foldwright "
        "check to see what would be right.",
        {{"count", left_out.size()}, {"ids", left_out}});
    add_sentence(model_.view.file_news.note, said(text));
  }
  show_progress("");
  find_print_folder();
}

Session::~Session() {
  if (speaks_last == this) {
    set_last_words(nullptr);
    speaks_last = nullptr;
  }
}

void Session::save_at_last_words() {
  speaks_last = this;
  set_last_words([] { speaks_last->save(); });
}

void Session::load(const std::string& folder, State fresh) {
  const std::string settings_path = folder + settings_file;
  if (files_.exists(settings_path)) {
    const auto text = files_.read(settings_path);
    const auto settings = text ? read_settings(text.value()) : read_settings("");
    if (settings) {
      model_.view.settings = settings.value();
    } else {
      set_aside(settings_path, text ? settings.error() : text.error().message);
    }
  }
  model_.state = fresh;
  const std::string place_path = folder + place_file;
  if (files_.exists(place_path)) {
    const auto text = files_.read(place_path);
    auto place = at_place(std::move(fresh), text ? text.value() : std::string());
    if (place) {
      model_.state = std::move(place).value();
    } else {
      set_aside(place_path, text ? place.error() : text.error().message);
    }
  }
  model_.state.notation = model_.view.settings.notation;
}

void Session::set_aside(const std::string& path, const std::string& reason) {
  const auto moved = files_.move_aside(path);
  messages_.push_back(reason + (moved ? " It was set aside as " + moved.value() + "." : " " + moved.error().message));
  add_sentence(model_.view.file_news.note, messages_.back());
}

void Session::cannot_save(const std::string& reason) {
  messages_.push_back(reason);
  unsaved_ = reason + " Your settings and your place in the lesson are not being saved.";
}

void Session::tell_file_news() {
  FileNews news{progress_.trouble(), !progress_.trouble().empty(), model_.view.file_news.note};
  add_sentence(news.unsaved, unsaved_);
  if (!(news == model_.view.file_news)) {
    take(TakeFileNews{news});
  }
}

bool Session::dispatch(const Commands& commands) {
  changed_ = false;
  bool time_passes = false;
  for (const Command& command : commands) {
    time_passes = time_passes || command.as<Tick>() != nullptr;
    const std::size_t answered = model_.state.quiz.attempts.size();
    take(command);
    // An answer that is done again was counted when it was given.
    if (command.as<Redo>() == nullptr) {
      record_from(answered);
    }
  }
  go_on_printing(time_passes);
  if (today_() != model_.view.progress.today) {
    show_progress(model_.view.progress.message);  // a new day began
  }
  return changed_;
}

void Session::take(const Command& command) {
  Outcome outcome = apply(std::move(model_), command);
  model_ = std::move(outcome.model);
  changed_ = changed_ || outcome.changed;
  for (const Effect effect : outcome.effects) {
    carry_out(effect);
  }
}

void Session::shares(std::string page_file) {
  model_.view.print.can_share = !page_file.empty();
  page_file_ = std::move(page_file);
}

/// The folder that pages were last saved in, if it is still there, else that for documents.
void Session::find_print_folder() {
  std::string folder = model_.view.settings.print_folder;
  if (folder.empty() || files_.kind(folder) != platform::PathKind::Folder) {
    folder = files_.documents_folder().value_or("");
  }
  take(TakeSaved{"", false, folder});
}

void Session::go_on_printing(bool time_passes) {
  if (const auto begun = printer_.follow(model_)) {
    take(*begun);
  }
  constexpr double slice = 0.015;  // seconds; the window is drawn between
  if (const auto more = time_passes && !model_.view.blank ? printer_.go_on(slice) : std::nullopt) {
    take(*more);
  }
}

void Session::carry_out(Effect effect) {
  switch (effect) {
    case Effect::SaveSettings:
      settings_changed_ = true;
      break;
    case Effect::SavePlace:
      place_changed_ = true;
      break;
    case Effect::EnterFullScreen:
    case Effect::LeaveFullScreen:
      if (full_screen_) {
        full_screen_(effect == Effect::EnterFullScreen);
      }
      break;
    case Effect::ExportProgress:
      show_progress(progress_.export_table());
      break;
    case Effect::EraseProgress:
      show_progress(progress_.erase());
      break;
    case Effect::SavePrint:
      take(printer_.save(model_));
      break;
    case Effect::SaveAsPage:
      take(saved_as_page(files_, model_, page_file_));
      break;
  }
}

void Session::record_from(std::size_t first) {
  const std::vector<practice::Attempt>& all = model_.state.quiz.attempts;
  if (all.size() > first) {
    record({all.begin() + static_cast<std::ptrdiff_t>(first), all.end()});
  }
}

void Session::record(const std::vector<practice::Attempt>& attempts) {
  progress_.record(attempts, today_());
  show_progress("");
}

void Session::show_progress(std::string message) {
  for (std::string& said : progress_.take_messages()) {
    if (said != progress_.trouble()) {  // a damaged file that was set aside
      add_sentence(model_.view.file_news.note, said);
    }
    messages_.push_back(std::move(said));
  }
  auto kept = std::make_shared<const practice::Progress>(progress_.progress());
  take(TakeProgress{std::move(kept), today_(), std::move(message)});
  tell_file_news();
}

void Session::write(const std::string& name, const std::string& text) {
  if (const auto error = files_.write_atomically(folder_ + name, text)) {
    cannot_save(error->message);
    folder_.clear();  // said once; a full disk is not asked again at every click
  }
}

void Session::save_place() {
  // Another window may have written the place of another lesson meanwhile.
  const auto lock = files_.lock_folder(folder_);
  if (!lock) {
    cannot_save(lock.error().message);
    return;
  }
  const std::string path = folder_ + place_file;
  const auto kept = files_.exists(path) ? files_.read(path) : std::string();
  write(place_file, place_text(model_.state, kept ? kept.value() : std::string()));
}

void Session::save() {
  if (settings_changed_ && !folder_.empty()) {
    write(settings_file, settings_text(model_.view.settings));
    settings_changed_ = false;
  }
  if (place_changed_ && !folder_.empty()) {
    save_place();
    place_changed_ = false;
  }
  tell_file_news();
}

}  // namespace fw::state
