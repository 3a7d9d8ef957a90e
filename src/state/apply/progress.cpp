#include "state/apply/handlers.hpp"
#include "tasks/generate/generate.hpp"

namespace fw::state::handlers {

std::string on(Model& model, const ShowProgress& command) {
  ProgressPage& page = model.view.progress;
  page.shown = command.on;
  page.asks = false;
  page.message.clear();
  model.view.keys_shown = model.view.keys_shown && !command.on;
  model.view.print.shown = model.view.print.shown && !command.on;
  return {};
}

std::string on(Model& model, const ExportProgress&) {
  model.view.progress.asks = false;
  return {};
}

std::string on(Model& model, const EraseProgress& command) {
  ProgressPage& page = model.view.progress;
  page.asks = !command.sure;
  page.message.clear();
  return {};
}

std::string on(Model& model, const TakeProgress& command) {
  ProgressPage& page = model.view.progress;
  page.kept = command.kept;
  page.rows = page.kept ? practice::summary(*page.kept, command.today, tasks::type_names())
                        : std::vector<practice::SkillSummary>{};
  page.today = command.today;
  page.message = command.message;
  return {};
}

std::string on(Model& model, const TakeFileNews& command) {
  model.view.file_news = command.news;
  return {};
}

std::string on(Model& model, const CloseFileNews&) {
  model.view.file_news.note.clear();
  return {};
}

}  // namespace fw::state::handlers
