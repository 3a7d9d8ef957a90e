#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace state;
using namespace ui;

namespace {

/// In a few words; the page of practice has all of them. What is being lost comes first.
std::string headline_of(const FileNews& news) {
  if (news.loses_answers) {
    return "Your answers are not being saved.";
  }
  if (!news.unsaved.empty()) {
    return "Your place in the lesson is not being saved.";
  }
  return news.note;
}

}  // namespace

double file_news_height(const Ui& ui, const Model& model) {
  return headline_of(model.view.file_news).empty() ? 0 : ui.sizes().icon + ui.sizes().space;
}

void file_news(Ui& ui, const Shown& shown, Commands& out) {
  if (shown.screen.news.h <= 0) {
    return;
  }
  const FileNews& news = shown.view().file_news;
  const Sizes& sizes = ui.sizes();
  ui.panel(shown.screen.news);
  Row row(shown.screen.news.inset(2 * sizes.space, sizes.space * 0.5), sizes.space);
  if (news.unsaved.empty()) {  // what is being lost cannot be closed
    const Rect place = row.take_right(sizes.icon).middle(sizes.icon, sizes.icon);
    if (ui.icon_button(ids::close_file_news, Icon::Close, "close this line", place)) {
      out.push_back(CloseFileNews{});
    }
  }
  const char* more = "read it all";
  if (ui.button(ids::more_file_news, more, row.take_right(ui.button_width(more, {.size = TextSize::Small})),
                {.size = TextSize::Small})) {
    out.push_back(ShowProgress{true});
  }
  ui.text(headline_of(news), row.rest(),
          {.size = TextSize::Small,
           .bold = true,
           .color = news.unsaved.empty() ? ui.theme().ink : ui.theme().bad,
           .shrink = true});
}

}  // namespace fw::panels
