#include "panels/frame.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

FrameResult draw_frame(Ui& ui, const Fonts& fonts, const Model& model, const Derived& derived, double height) {
  const Theme theme = Theme::make(model.view.settings.theme, height);
  FrameResult result;
  ui.begin(theme, fonts);
  ui.keys_are(key_scene(model, derived));
  if (model.view.blank) {
    result.shows_bench = false;
    const Screen screen;
    blank_sheet(ui, {model, derived, screen}, result.commands);
    shortcuts(ui, model, derived, result.commands);
    ui.end();
    return result;
  }
  const figures::Rect window = ui.window();
  const Screen rough = screen_for(window, model, theme.sizes, {});
  const Screen screen =
      screen_for(window, model, theme.sizes, {prompt_height(ui, model, rough.prompt.w), file_news_height(ui, model)});
  const Shown shown{model, derived, screen};

  result.picture = bench_picture(model, derived, theme, screen.bench, label_measure(ui.canvas(), theme));

  title_bar(ui, shown, result.commands);
  file_news(ui, shown, result.commands);
  prompt(ui, shown, result.commands);
  rail(ui, shown, result.commands);
  bench(ui, shown, result.picture, result.commands);
  fold_bar(ui, shown, result.commands);
  side(ui, shown, result.commands);
  keys_sheet(ui, shown, result.commands);
  progress_sheet(ui, shown, result.commands);
  print_sheet(ui, shown, result.commands);
  shortcuts(ui, model, derived, result.commands);
  ui.end();
  return result;
}

}  // namespace fw::panels
