#include "state/printer.hpp"

#include "paper/pdf_file.hpp"
#include "platform/clock.hpp"
#include "platform/paths.hpp"
#include "state/paper_type.hpp"

namespace fw::state {
namespace {

using platform::PathKind;
using words::message;

constexpr std::size_t pdf_limit = std::size_t{256} << 20U;

}  // namespace

bool Printer::is_of(const Model& model) const {
  const bool same_problem = !job_->choices.only_this || job_->problem == model.state.problem;
  return job_->choices == model.view.print.choices && job_->whole == model.state.lesson && same_problem;
}

std::optional<TakePrinted> Printer::follow(const Model& model) {
  const PrintPage& page = model.view.print;
  if (!page.shown || page.is_stopped) {
    job_.reset();
    return std::nullopt;
  }
  if (job_ && is_of(model) && page.of > 0) {
    return std::nullopt;
  }
  job_.emplace();
  job_->choices = page.choices;
  job_->whole = model.state.lesson;
  job_->problem = model.state.problem;
  job_->lesson = printed_lesson(model.state, page.choices);
  const paper::SheetKind& kind = *paper::find_sheet(page.choices.sheet);
  kind.plan(job_->work, paper_type(), *job_->lesson, sheet_options(page.choices, *job_->lesson));
  return TakePrinted{nullptr, 0, job_->work.size()};
}

std::optional<TakePrinted> Printer::go_on(double seconds) {
  if (!job_ || job_->work.is_done()) {
    return std::nullopt;
  }
  const double end = platform::monotonic_seconds() + seconds;
  do {
    job_->work.step();
  } while (!job_->work.is_done() && platform::monotonic_seconds() < end);
  auto printed = job_->work.is_done() ? std::make_shared<const paper::Printed>(std::move(job_->work.printed)) : nullptr;
  return TakePrinted{std::move(printed), job_->work.done(), job_->work.size()};
}

std::optional<std::string> Printer::refusal(const std::string& path) const {
  const std::string folder = platform::folder_of(path);
  if (files_.kind(folder) != PathKind::Folder) {
    return said(
        message("The folder \"{folder}\" doesn't exist. Make it first, or save somewhere else.", {{"folder", folder}}));
  }
  const PathKind there = files_.kind(path);
  if (there == PathKind::Folder) {
    return said(message("\"{path}\" is a folder. Pick another name.", {{"path", path}}));
  }
  const auto text = there == PathKind::File ? files_.read(path, pdf_limit) : std::string();
  const bool is_ours = text && (text->empty() || text->rfind("%PDF-", 0) == 0);
  if (there == PathKind::Stream || !is_ours) {
    return said(message("\"{path}\" already exists and is not a PDF file. Pick another name.", {{"path", path}}));
  }
  return std::nullopt;
}

TakeSaved Printer::save(const Model& model) const {
  const PrintPage& page = model.view.print;
  const std::string path = print_path(page, *model.state.lesson);
  if (page.printed == nullptr || page.printed->pages.empty()) {
    return {said(message("The pages aren't ready yet.")), true, page.folder};
  }
  if (auto reason = refusal(path)) {
    return {std::move(*reason), true, page.folder};
  }
  const std::string bytes = paper::pdf_file(page.printed->pages, paper_type(), model.state.lesson->title);
  if (auto error = files_.write_atomically(path, bytes)) {
    return {std::move(error->message), true, page.folder};
  }
  return {said(message("Saved {pages} {pages:page|pages} in {path}",
                       {{"pages", page.printed->pages.size()}, {"path", path}})),
          false, platform::folder_of(path)};
}

}  // namespace fw::state
