#include <CLI/CLI.hpp>
#include <algorithm>
#include <iostream>
#include <memory>

#include "cli/arguments.hpp"
#include "cli/json_output.hpp"
#include "cli/open_lesson.hpp"
#include "cli/verbs/verbs.hpp"
#include "paper/sheets/problem_text.hpp"
#include "practice/choices.hpp"
#include "tasks/catalog.hpp"
#include "tasks/decide/mistake.hpp"

namespace fw::cli {
namespace {

using lessons::Finding;

struct CheckOptions {
  std::vector<std::string> lessons;
  bool json = false;
  bool tells_code = false;
};

std::string severity_text(Finding::Kind kind) {
  switch (kind) {
    case Finding::Kind::Format:
      return "format";
    case Finding::Kind::Impossible:
      return "impossible";
    case Finding::Kind::Missing:
      return "missing";
    case Finding::Kind::Rounding:
      return "rounding";
    case Finding::Kind::Masking:
      return "masking";
  }
  return "";
}

bool is_remark(const Finding& finding) { return finding.is_remark; }

// The nearest value that would fit, as a quantity; null where none can be named.
Json nearest_json(const Finding& finding) {
  const Result<units::WrittenQuantity, exact::NumberError> nearest = units::parse_quantity(finding.nearest);
  return nearest ? quantity_json(nearest->number.value, nearest->unit) : Json(nullptr);
}

Json finding_json(const std::string& file, const Finding& finding) {
  return {{"file", file},
          {"line", finding.place.line},
          {"column", finding.place.column},
          {"problem", finding.problem},
          {"measure", finding.measure},
          {"severity", severity_text(finding.kind)},
          {"message", said(finding.message)},
          {"nearest", nearest_json(finding)}};
}

std::string counted(std::size_t count, const std::string& noun) {
  return std::to_string(count) + " " + noun + (count == 1 ? "" : "s");
}

void print_findings(const std::string& file, const std::vector<Finding>& findings) {
  for (std::size_t i = 0; i < std::min(findings.size(), most_findings); ++i) {
    const Finding& finding = findings[i];
    std::cout << lessons::text(finding, file) << (is_remark(finding) ? " (" + severity_text(finding.kind) + ")" : "")
              << '\n';
  }
  const std::string more = more_findings(findings.size());
  std::cout << (more.empty() ? "" : file + ": " + more + "\n");
  const auto remarks = static_cast<std::size_t>(std::count_if(findings.begin(), findings.end(), is_remark));
  std::cout << file << ": "
            << (findings.empty() ? "nothing to remark"
                                 : counted(findings.size() - remarks, "error") + ", " + counted(remarks, "remark"))
            << '\n';
}

// Where the key of this text stands for the n-th time, from 0.
std::size_t offset_of_key(const std::string& text, const std::string& key, std::size_t n) {
  const std::string quoted = '"' + key + '"';
  std::size_t at = text.find(quoted);
  while (at != std::string::npos) {
    const std::size_t next = text.find_first_not_of(" \t\r\n", at + quoted.size());
    const bool is_key = next != std::string::npos && text[next] == ':';
    if (is_key && n == 0) {
      return at;
    }
    n -= is_key ? 1U : 0U;
    at = text.find(quoted, at + 1);
  }
  return 0;
}

// Wrong answers whose mistake is asked for, and that no single mistake leads to. Of a lesson without errors.
std::vector<Finding> unclear_mistakes(const std::string& text, const std::optional<lessons::Lesson>& lesson) {
  std::vector<Finding> findings;
  std::size_t count = 0;
  for (const lessons::Problem& problem : lesson ? lesson->problems : std::vector<lessons::Problem>{}) {
    if (!tasks::asks_which_mistake(problem)) {
      continue;
    }
    const auto choices = practice::choices_of(problem, 0);
    const std::size_t offset = offset_of_key(text, "wrong", count++);
    if (!choices) {
      Finding finding;
      finding.place = place_of(text, offset);
      finding.problem = problem.id;
      finding.measure = "wrong";
      finding.message = choices.error();
      findings.push_back(std::move(finding));
    }
  }
  return findings;
}

ExitStatus check(const CheckOptions& options) {
  ExitStatus status = ExitStatus::Done;
  Json list = Json::array();
  std::size_t more = 0;
  for (const std::string& file : options.lessons) {
    const std::optional<std::string> text = read_lesson_text(file, status);
    if (!text) {
      continue;
    }
    lessons::Reading reading = tasks::reading_of(*text);
    std::vector<Finding> findings = std::move(reading.findings);
    const std::vector<Finding> unclear = unclear_mistakes(*text, reading.lesson);
    findings.insert(findings.end(), unclear.begin(), unclear.end());
    if (!std::all_of(findings.begin(), findings.end(), is_remark)) {
      status = worse(status, ExitStatus::LessonAtFault);
    }
    if (!options.json) {
      print_findings(file, findings);
    }
    if (!options.json && options.tells_code && reading.lesson) {
      std::cout << file << ": code " << paper::lesson_code(*reading.lesson) << '\n';
    }
    for (std::size_t i = 0; i < std::min(findings.size(), most_findings); ++i) {
      list.push_back(finding_json(file, findings[i]));
    }
    more += findings.size() - std::min(findings.size(), most_findings);
  }
  if (options.json) {
    Json document{{"findings", std::move(list)}};
    if (more > 0) {
      document["more"] = more;
    }
    print_json(document);
  }
  return status;
}

}  // namespace

void add_check(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<CheckOptions>();
  CLI::App* verb = app.add_subcommand("check", "Says what cannot be, what is missing and what only fits by rounding");
  verb->add_option("LESSON", options->lessons, "The lesson files")->type_name(file_type)->required();
  verb->add_flag("--code", options->tells_code, "Tell the six-letter code at the bottom of its printed pages");
  verb->add_flag("--json", options->json, "Print JSON for programs");
  verb->callback([options, &status] { status = check(*options); });
}

}  // namespace fw::cli
