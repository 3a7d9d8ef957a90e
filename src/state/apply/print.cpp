#include <algorithm>

#include "state/apply/handlers.hpp"

namespace fw::state::handlers {
namespace {

void forget_pages(PrintPage& page) {
  page.page = 0;
  page.is_stopped = false;
  page.message.clear();
  page.is_refused = false;
  page.printed.reset();
  page.done = page.of = 0;
}

}  // namespace

std::string on(Model& model, const ShowPrint& command) {
  PrintPage& page = model.view.print;
  page.shown = command.on && !model.state.in_item();  // a key would tell the answer that is asked for
  forget_pages(page);
  if (page.shown) {
    model.view.keys_shown = false;
    model.view.progress.shown = false;
  }
  return {};
}

std::string on(Model& model, const SetPrint& command) {
  PrintPage& page = model.view.print;
  const PrintChoices& wanted = command.choices;
  const bool is_known = paper::find_sheet(wanted.sheet) != nullptr &&
                        (wanted.paper.empty() || paper::find_paper(wanted.paper) != nullptr) && wanted.versions >= 1 &&
                        wanted.versions <= most_versions;
  if (is_known && !(wanted == page.choices)) {
    page.choices = wanted;
    forget_pages(page);
  }
  return {};
}

std::string on(Model& model, const TurnPage& command) {
  PrintPage& page = model.view.print;
  if (page.printed != nullptr && !page.printed->pages.empty()) {
    const auto last = static_cast<std::ptrdiff_t>(page.printed->pages.size()) - 1;
    const std::ptrdiff_t next = static_cast<std::ptrdiff_t>(page.page) + command.by;
    page.page = static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(next, 0, last));
  }
  return {};
}

std::string on(Model& model, const SetPrintPlace& command) {
  PrintPage& page = model.view.print;
  page.place = command.text;
  page.message.clear();
  page.is_refused = false;
  return {};
}

std::string on(Model&, const SavePrint&) { return {}; }
std::string on(Model&, const SaveAsPage&) { return {}; }

std::string on(Model& model, const StopPrint&) {
  PrintPage& page = model.view.print;
  page.is_stopped = page.is_making();
  return {};
}

std::string on(Model& model, const TakePrinted& command) {
  PrintPage& page = model.view.print;
  page.printed = command.printed;
  page.done = command.done;
  page.of = command.of;
  page.page = 0;
  return {};
}

std::string on(Model& model, const TakeSaved& command) {
  PrintPage& page = model.view.print;
  page.message = command.message;
  page.is_refused = command.is_refused;
  page.folder = command.folder;
  if (!command.is_refused && !command.message.empty()) {
    model.view.settings.print_folder = command.folder;
  }
  return {};
}

}  // namespace fw::state::handlers
