#include <algorithm>

#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "paper/sheets/print.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;
using paper::SheetChoice;
using paper::SheetKind;

/// Something to choose, and what is chosen now.
struct ChoiceRow {
  const char* caption;
  const char* what;  ///< of which there is another one: "paper"
  std::vector<std::string> words;
  std::size_t current = 0;
  std::function<void(PrintChoices&, std::size_t)> choose;
};

std::string paper_word(const paper::PaperSize& size) {
  std::string word = size.key;
  if (word == "a4" || word == "a3") {
    word[0] = 'A';
  }
  return word;
}

ChoiceRow paper_row(const PrintChoices& choices, const lessons::Lesson& lesson) {
  ChoiceRow row{"Paper", "paper", {}, 0, {}};
  const std::string current = choices.paper.empty() ? paper::usual_paper(lesson).key : choices.paper;
  const std::vector<paper::PaperSize>& sizes = paper::paper_sizes();
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    row.words.push_back(paper_word(sizes[i]));
    row.current = sizes[i].key == current ? i : row.current;
  }
  row.choose = [](PrintChoices& all, std::size_t i) { all.paper = paper::paper_sizes()[i].key; };
  return row;
}

ChoiceRow scale_row(const PrintChoices& choices) {
  ChoiceRow row{"Scale", "scale", {"largest that fits"}, 0, {}};
  const std::vector<paper::PaperScale> scales = paper::usual_scales(false);
  for (std::size_t i = 0; i < scales.size(); ++i) {
    row.words.push_back(scales[i].paper == scales[i].thing ? "true size" : scales[i].text());
    row.current = choices.scale == scales[i] ? i + 1 : row.current;
  }
  row.choose = [](PrintChoices& all, std::size_t i) {
    all.scale = i == 0 ? std::nullopt : std::optional(paper::usual_scales(false)[i - 1]);
  };
  return row;
}

ChoiceRow versions_row(const PrintChoices& choices) {
  ChoiceRow row{"Versions", "number of versions", {}, choices.versions - 1, {}};
  for (std::size_t i = 1; i <= most_versions; ++i) {
    row.words.push_back(std::to_string(i));
  }
  row.choose = [](PrintChoices& all, std::size_t i) { all.versions = i + 1; };
  return row;
}

std::vector<ChoiceRow> choice_rows(const PrintChoices& choices, const lessons::Lesson& lesson) {
  const SheetKind& kind = *paper::find_sheet(choices.sheet);
  std::vector<ChoiceRow> rows;
  rows.push_back({"Problems",
                  "choice of problems",
                  {"all of them", "this one"},
                  choices.only_this ? 1U : 0U,
                  [](PrintChoices& all, std::size_t i) { all.only_this = i == 1; }});
  rows.push_back(paper_row(choices, lesson));
  rows.push_back({"Size",
                  "size of print",
                  {"normal", "large print"},
                  choices.is_large ? 1U : 0U,
                  [](PrintChoices& all, std::size_t i) { all.is_large = i == 1; }});
  if (kind.has(SheetChoice::Versions)) {
    rows.push_back(versions_row(choices));
  }
  if (kind.has(SheetChoice::Gaps)) {
    rows.push_back({"Blanks",
                    "choice of blanks",
                    {"all", "every other one", "none"},
                    static_cast<std::size_t>(choices.gaps),
                    [](PrintChoices& all, std::size_t i) { all.gaps = static_cast<paper::Gaps>(i); }});
  }
  if (kind.has(SheetChoice::Steps)) {
    rows.push_back({"Steps",
                    "choice of steps",
                    {"answers only", "as on the board", "every step"},
                    static_cast<std::size_t>(choices.steps),
                    [](PrintChoices& all, std::size_t i) { all.steps = static_cast<paper::Steps>(i); }});
  }
  if (kind.has(SheetChoice::Work)) {
    rows.push_back({"Space",
                    "space to work",
                    {"lines", "a grid", "blank"},
                    static_cast<std::size_t>(choices.work),
                    [](PrintChoices& all, std::size_t i) { all.work = static_cast<paper::WorkSpace>(i); }});
  }
  if (kind.has(SheetChoice::Cutouts)) {
    rows.push_back(scale_row(choices));
    rows.push_back({"Faces",
                    "choice for the faces",
                    {"labeled", "blank"},
                    choices.is_blank ? 1U : 0U,
                    [](PrintChoices& all, std::size_t i) { all.is_blank = i == 1; }});
  }
  return rows;
}

/// The row with the choice before and the next one at its sides; after the last comes the first.
void choice_row(Ui& ui, const ChoiceRow& row, std::size_t number, const PrintChoices& choices, const Rect& rect,
                Commands& out) {
  const Sizes& sizes = ui.sizes();
  Row cut(rect, sizes.space * 0.5);
  ui.text(row.caption, cut.take(ui.text_width("Problems", TextSize::Small) + sizes.space),
          {.size = TextSize::Small, .color = ui.theme().quiet_ink});
  const auto icon = [&](WidgetId id, Icon picture, const std::string& text, const Rect& place) {
    return ui.icon_button(id, picture, text, place.middle(sizes.icon, sizes.icon));
  };
  const std::size_t count = row.words.size();
  std::optional<std::size_t> chosen;
  if (icon(ids::print_less.at(number), Icon::Previous, std::string("previous ") + row.what, cut.take(sizes.icon))) {
    chosen = (row.current + count - 1) % count;
  }
  const Rect next = cut.take_right(sizes.icon);
  ui.text(row.words[row.current], cut.rest(),
          {.size = TextSize::Small, .bold = true, .h = HAlign::Center, .shrink = true});
  if (icon(ids::print_more.at(number), Icon::Next, std::string("next ") + row.what, next)) {
    chosen = (row.current + 1) % count;
  }
  if (chosen) {
    PrintChoices wanted = choices;
    row.choose(wanted, *chosen);
    out.push_back(SetPrint{wanted});
  }
}

/// What two columns of it need.
double two_columns_width(const Ui& ui) {
  double widest = 0;
  for (const SheetKind& kind : paper::sheet_kinds()) {
    widest = std::max(widest, ui.text_width(kind.title, TextSize::Small));
  }
  return 2 * (widest + 2.2 * ui.em(TextSize::Label)) + ui.sizes().space;
}

std::size_t kind_columns(const Ui& ui, double width) { return two_columns_width(ui) <= width ? 2 : 1; }

std::size_t kind_rows(const Ui& ui, double width) {
  const std::size_t columns = kind_columns(ui, width);
  return (paper::sheet_kinds().size() + columns - 1) / columns;
}

double kind_list_height(const Ui& ui, double width) {
  return static_cast<double>(kind_rows(ui, width)) * (ui.sizes().field + ui.sizes().space) - ui.sizes().space;
}

/// What can be printed.
void kind_list(Ui& ui, const PrintChoices& choices, const Rect& rect, Commands& out) {
  const std::vector<SheetKind>& kinds = paper::sheet_kinds();
  const std::size_t columns = kind_columns(ui, rect.w);
  const std::size_t rows = kind_rows(ui, rect.w);
  Row cut(rect, ui.sizes().space);
  const double width = columns == 1 ? rect.w : (rect.w - ui.sizes().space) / 2;
  constexpr WidgetId columns_ids[] = {ids::print_kind, ids::print_kind_more};
  for (std::size_t column = 0; column < columns; ++column) {
    const std::size_t first = column * rows;
    std::vector<std::string> titles;
    std::optional<std::size_t> current;
    for (std::size_t i = first; i < std::min(first + rows, kinds.size()); ++i) {
      current = kinds[i].key == choices.sheet ? std::optional(i - first) : current;
      titles.push_back(kinds[i].title);
    }
    if (const auto chosen = ui.options(columns_ids[column], titles, current, cut.take(width))) {
      PrintChoices wanted = choices;
      wanted.sheet = kinds[first + *chosen].key;
      out.push_back(SetPrint{wanted});
    }
  }
}

void choices_list(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const PrintChoices& choices = shown.view().print.choices;
  const std::vector<ChoiceRow> rows = choice_rows(choices, *shown.state().lesson);
  const double gap = sizes.space * 0.5;
  const double width = rect.w - sizes.scroll_bar - sizes.space;
  const std::string says = paper::find_sheet(choices.sheet)->says;
  const double said = ui.wrapped_height(says, width, TextSize::Small);
  const double kinds = kind_list_height(ui, width);
  const double whole = kinds + said + static_cast<double>(rows.size()) * (sizes.field + gap) + 2 * sizes.space;
  const Rect content = ui.begin_scroll(ids::print_choices, rect, whole);
  Column column({content.x, content.y, width, content.h}, gap);
  kind_list(ui, choices, column.take(kinds), out);
  ui.text(says, column.take(said),
          {.size = TextSize::Small, .v = figures::VAlign::Top, .wrap = true, .color = ui.theme().quiet_ink});
  for (std::size_t i = 0; i < rows.size(); ++i) {
    choice_row(ui, rows[i], i, choices, column.take(sizes.field), out);
  }
  ui.end_scroll();
}

/// What became of saving, or what has to be known of the pages.
std::string news_of(const PrintPage& page) {
  if (!page.message.empty() || page.printed == nullptr) {
    return page.message;
  }
  std::string text;
  for (const words::Message& remark : paper::remarks_on(*page.printed)) {
    text += (text.empty() ? "" : " ") + said(remark);
  }
  return page.printed->pages.empty() ? "There is nothing to print. " + text : text;
}

void news(Ui& ui, const PrintPage& page, const std::string& text, const Rect& rect) {
  const double width = rect.w - ui.sizes().scroll_bar - ui.sizes().space;
  const double height = ui.wrapped_height(text, width, TextSize::Small);
  const Rect content = ui.begin_scroll(ids::print_news, rect, height);
  ui.text(text, {content.x, content.y, width, height},
          {.size = TextSize::Small,
           .bold = page.is_refused,
           .v = figures::VAlign::Top,
           .wrap = true,
           .color = page.is_refused ? ui.theme().bad : ui.theme().ink});
  ui.end_scroll();
}

bool has_pages(const PrintPage& page) { return page.printed != nullptr && !page.printed->pages.empty(); }

/// The file that the pages go into.
void place_field(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const PrintPage& page = shown.view().print;
  Row row(rect, sizes.space);
  const std::string caption = "File";
  ui.text(caption, row.take(ui.text_width(caption, TextSize::Small)),
          {.size = TextSize::Small, .color = ui.theme().quiet_ink});
  const std::string path = print_path(page, *shown.state().lesson);
  const FieldEvent event = ui.field(ids::print_place, "file to save to", path, row.rest(),
                                    {.bad = page.is_refused, .size = TextSize::Small, .longest = 400});
  if ((event.entered || event.left) && event.text != path) {
    out.push_back(SetPrintPlace{event.text});
  }
  if (event.entered && has_pages(page)) {
    out.push_back(SavePrint{});
  }
}

/// What is chosen, what has to be known of it, and how it is saved, from top to bottom.
void left_side(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const PrintPage& page = shown.view().print;
  Column column(rect, sizes.space);
  const Rect save = column.take_bottom(sizes.button);
  const Rect place = column.take_bottom(sizes.field);
  const std::string text = news_of(page);
  Rect told{};
  if (!text.empty()) {
    constexpr double most_lines = 3;
    const double height = ui.wrapped_height(text, rect.w - sizes.scroll_bar - sizes.space, TextSize::Small);
    told = column.take_bottom(std::min(height, most_lines * ui.line(TextSize::Small)));
  }
  choices_list(ui, shown, column.rest(), out);
  if (!text.empty()) {
    news(ui, page, text, told);
  }
  place_field(ui, shown, place, out);
  Row buttons(save, sizes.space);
  if (page.can_share && ui.button(ids::print_share, "Save as web page", buttons.take_right(save.w / 2))) {
    out.push_back(SaveAsPage{});
  }
  if (ui.button(ids::print_save, "Save as PDF", buttons.rest(),
                {.look = ButtonLook::Primary, .enabled = has_pages(page)})) {
    out.push_back(SavePrint{});
  }
}

/// Half of the sheet, or more where the list of what can be printed then has two columns.
double left_width(const Ui& ui, double width) {
  constexpr double most = 0.62;
  const double needed = two_columns_width(ui) + ui.sizes().scroll_bar + 2 * ui.sizes().space;
  return needed <= most * width ? std::max(0.5 * width, needed) : 0.5 * width;
}

/// The page as it will be, on white, as large as there is room.
void preview(Ui& ui, const paper::Page& page, const Rect& rect) {
  const double scale = std::min(rect.w / page.width, rect.h / page.height);
  const Rect sheet = rect.middle(page.width * scale, page.height * scale);
  figures::Canvas& canvas = ui.canvas();
  canvas.rounded(sheet, 0, paper::white, figures::Stroke{ui.theme().ink, ui.sizes().rule});
  canvas.push_clip(sheet);
  paper::draw_page(canvas, page, {sheet.x, sheet.y}, scale, 0.6);
  canvas.pop_clip();
}

/// How far the pages are, and the button that stops it; or the one that begins again.
void making(Ui& ui, const PrintPage& page, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Column column(rect.middle(std::min(rect.w, 16 * sizes.small), 3 * ui.line(TextSize::Small) + sizes.button),
                sizes.space);
  const char* text = page.is_stopped ? "Stopped." : "Making the pages …";
  ui.text(text, column.take(ui.line(TextSize::Small)), {.size = TextSize::Small, .h = HAlign::Center});
  const Rect bar = column.take(sizes.space);
  const double share = static_cast<double>(page.done) / static_cast<double>(std::max<std::size_t>(1, page.of));
  ui.canvas().rounded(bar, sizes.space / 2, std::nullopt, figures::Stroke{ui.theme().ink, sizes.rule});
  if (share > 0) {
    ui.canvas().rounded({bar.x, bar.y, bar.w * share, bar.h}, sizes.space / 2, ui.theme().ink, std::nullopt);
  }
  const Rect button = column.take(sizes.button);
  if (page.is_stopped) {
    if (ui.button(ids::print_again, "make them", button)) {
      out.push_back(ShowPrint{true});
    }
  } else if (ui.button(ids::print_stop, "stop", button)) {
    out.push_back(StopPrint{});
  }
}

void page_steps(Ui& ui, const PrintPage& page, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const std::size_t count = page.printed->pages.size();
  const std::string number = "page " + std::to_string(page.page + 1) + " of " + std::to_string(count);
  Row row(
      rect.middle(std::min(rect.w, 2 * sizes.icon + ui.text_width(number, TextSize::Small) + 4 * sizes.space), rect.h),
      sizes.space);
  const auto icon = [&](WidgetId id, Icon picture, const char* text, const Rect& place, bool enabled) {
    return ui.icon_button(id, picture, text, place.middle(sizes.icon, sizes.icon),
                          {.look = ButtonLook::Plain, .enabled = enabled});
  };
  if (icon(ids::page_before, Icon::Previous, "page before", row.take(sizes.icon), page.page > 0)) {
    out.push_back(TurnPage{-1});
  }
  const Rect next = row.take_right(sizes.icon);
  ui.text(number, row.rest(), {.size = TextSize::Small, .h = HAlign::Center, .shrink = true});
  if (icon(ids::page_next, Icon::Next, "next page", next, page.page + 1 < count)) {
    out.push_back(TurnPage{1});
  }
}

}  // namespace

void print_sheet(Ui& ui, const Shown& shown, Commands& out) {
  const PrintPage& page = shown.view().print;
  if (!page.shown) {
    return;
  }
  const Sizes& sizes = ui.sizes();
  const Rect window = ui.window();
  const Rect sheet = window.middle(window.w * 0.98, window.h * 0.98);
  ui.begin_sheet(ids::print_sheet, "print", sheet);
  Column column(sheet.inset(2 * sizes.space, sizes.space), sizes.space);
  if (sheet_head(ui, column, ids::print_close, "Print")) {
    out.push_back(ShowPrint{false});
  }
  Row halves(column.rest(), 2 * sizes.space);
  left_side(ui, shown, halves.take(left_width(ui, column.rest().w)), out);
  Column right(halves.rest(), sizes.space);
  const Rect steps = right.take_bottom(sizes.icon);
  if (page.printed == nullptr) {
    making(ui, page, right.rest(), out);
  } else if (!page.printed->pages.empty()) {
    preview(ui, page.printed->pages[page.page], right.rest());
    page_steps(ui, page, steps, out);
  }
  ui.end_sheet();
}

}  // namespace fw::panels
