#include <CLI/CLI.hpp>
#include <algorithm>
#include <iostream>
#include <map>
#include <memory>

#include "cli/arguments.hpp"
#include "cli/json_output.hpp"
#include "cli/open_lesson.hpp"
#include "cli/verbs/verbs.hpp"
#include "platform/files.hpp"
#include "practice/diagnosis.hpp"
#include "tasks/catalog.hpp"

namespace fw::cli {
namespace {

using practice::AnswerVerdict;
using practice::Cause;
using practice::Diagnosis;

struct DiagnoseOptions {
  std::string lesson;
  std::optional<std::string> problem;
  std::optional<std::string> answer;
  std::string find;
  std::string batch;
  bool json = false;
};

// ---- a table of answers ----

struct Row {
  std::string problem;
  std::string answer;
  std::size_t line = 0;
};

// The cells of comma-separated text, rows by line. Source: RFC 4180: a cell in quotes may hold commas, line ends and
// doubled quotes.
std::vector<std::vector<std::string>> cells_of(const std::string& text, std::vector<std::size_t>& lines) {
  std::vector<std::vector<std::string>> rows{{""}};
  lines = {1};
  std::size_t line = 1;
  bool is_quoted = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    line += c == '\n' ? 1U : 0U;
    if (is_quoted && c == '"' && i + 1 < text.size() && text[i + 1] == '"') {
      rows.back().back() += '"';
      ++i;
    } else if (c == '"' && (is_quoted || rows.back().back().empty())) {
      is_quoted = !is_quoted;
    } else if (!is_quoted && c == ',') {
      rows.back().emplace_back();
    } else if (!is_quoted && c == '\n') {
      rows.push_back({""});
      lines.push_back(line);
    } else if (is_quoted || c != '\r') {
      rows.back().back() += c;
    }
  }
  return rows;
}

// Rows of a problem and an answer; a first row "problem, answer" is a heading, empty rows are passed over.
std::optional<std::vector<Row>> rows_of(const std::string& path, ExitStatus& status) {
  const auto text = platform::desktop_files()->read(path);
  if (!text) {
    std::cerr << "foldwright: " << text.error().message << '\n';
    status = worse(status, ExitStatus::WrongUsage);
    return std::nullopt;
  }
  std::vector<std::size_t> lines;
  std::vector<Row> rows;
  const std::vector<std::vector<std::string>> table = cells_of(*text, lines);
  for (std::size_t i = 0; i < table.size(); ++i) {
    const bool is_empty = table[i].size() == 1 && table[i][0].empty();
    const bool is_heading = i == 0 && table[i][0] == "problem";
    if (is_empty || is_heading) {
      continue;
    }
    if (table[i].size() != 2) {
      std::cerr << path << ':' << lines[i] << ": a row has two cells, the problem and the answer; found "
                << table[i].size() << '\n';
      status = worse(status, ExitStatus::WrongUsage);
      continue;
    }
    rows.push_back({table[i][0], table[i][1], lines[i]});
  }
  return rows;
}

// ---- output ----

Json causes_json(const std::vector<Cause>& causes) {
  Json list = Json::array();
  for (const Cause& cause : causes) {
    Json faces = Json::array();
    for (const geometry::FaceId face : cause.faces) {
      faces.push_back(face.index() + 1);
    }
    list.push_back({{"id", cause.id},
                    {"message", said(cause.message)},
                    {"offered", cause.is_offered},
                    {"faces", std::move(faces)}});
  }
  return list;
}
Json diagnosis_json(const Row& row, const Diagnosis& diagnosis) {
  return {{"problem", row.problem},
          {"answer", row.answer},
          {"verdict", practice::text(diagnosis.verdict)},
          {"message", said(diagnosis.message)},
          {"causes", causes_json(diagnosis.causes)}};
}

std::string verdict_words(AnswerVerdict verdict) {
  switch (verdict) {
    case AnswerVerdict::Right:
      return "right";
    case AnswerVerdict::RightNumber:
      return "right number, unit to be mended";
    case AnswerVerdict::Recognized:
      return "recognized";
    case AnswerVerdict::Ask:
      return "several ways lead here";
    case AnswerVerdict::Unrecognized:
      break;
  }
  return "not recognized";
}

void print_text(const Row& row, const Diagnosis& diagnosis) {
  std::cout << row.problem << ": " << row.answer << ": " << verdict_words(diagnosis.verdict) << '\n'
            << "  " << said(diagnosis.message) << '\n';
  const bool is_said = diagnosis.causes.size() == 1 && diagnosis.causes.front().message == diagnosis.message;
  for (const Cause& cause : diagnosis.causes) {
    std::cout << (is_said ? "" : "  " + said(cause.message) + "\n");
  }
}

// How often each verdict and each likeliest cause came, problem by problem.
class Counts {
 public:
  void add(const std::string& problem, const Diagnosis& diagnosis) {
    const bool has_cause = !diagnosis.causes.empty() && diagnosis.verdict != AnswerVerdict::Unrecognized;
    const std::string cause = has_cause ? diagnosis.causes.front().id : practice::text(diagnosis.verdict);
    if (counts_.count(problem) == 0) {
      order_.push_back(problem);
    }
    ++counts_[problem][cause];
    words_.emplace(cause, has_cause ? said(diagnosis.causes.front().message) : verdict_words(diagnosis.verdict));
  }
  [[nodiscard]] Json json() const {
    Json all = Json::object();
    for (const std::string& problem : order_) {
      Json one = Json::object();
      for (const auto& [cause, count] : most_first(problem)) {
        one[cause] = count;
      }
      all[problem] = std::move(one);
    }
    return all;
  }
  void print() const {
    std::cout << "counts by the likeliest cause\n";
    for (const std::string& problem : order_) {
      std::cout << "  " << problem << '\n';
      for (const auto& [cause, count] : most_first(problem)) {
        std::cout << "    " << count << " × " << words_.at(cause) << '\n';
      }
    }
  }

 private:
  [[nodiscard]] std::vector<std::pair<std::string, int>> most_first(const std::string& problem) const {
    const std::map<std::string, int>& counts = counts_.at(problem);
    std::vector<std::pair<std::string, int>> list(counts.begin(), counts.end());
    std::stable_sort(list.begin(), list.end(), [](const auto& a, const auto& b) { return a.second > b.second; });
    return list;
  }
  std::vector<std::string> order_;
  std::map<std::string, std::map<std::string, int>> counts_;
  std::map<std::string, std::string> words_;  ///< of a cause, as it was first told; or of a verdict
};

// ---- the verb ----

std::optional<Diagnosis> diagnosis_of(const DiagnoseOptions& options, const lessons::Lesson& lesson, const Row& row,
                                      ExitStatus& status) {
  const std::vector<lessons::Problem> problems = chosen_problems(lesson, options.lesson, row.problem, status);
  if (problems.empty()) {
    return std::nullopt;
  }
  auto diagnosis = practice::diagnosed(tasks::asking(problems.front(), options.find), row.answer, options.find);
  if (!diagnosis) {
    std::cerr << "foldwright: " << options.lesson << ": problem " << row.problem << ": " << said(diagnosis.error())
              << '\n';
    status = worse(status, ExitStatus::LessonAtFault);
    return std::nullopt;
  }
  return std::move(diagnosis).value();
}

ExitStatus diagnose_one(const DiagnoseOptions& options, const lessons::Lesson& lesson) {
  ExitStatus status = ExitStatus::Done;
  const Row row{*options.problem, *options.answer, 0};
  const std::optional<Diagnosis> diagnosis = diagnosis_of(options, lesson, row, status);
  if (!diagnosis) {
    return status;
  }
  if (options.json) {
    print_json(diagnosis_json(row, *diagnosis));
  } else {
    print_text(row, *diagnosis);
  }
  return ExitStatus::Done;
}

ExitStatus diagnose_batch(const DiagnoseOptions& options, const lessons::Lesson& lesson) {
  ExitStatus status = ExitStatus::Done;
  const auto rows = rows_of(options.batch, status);
  if (!rows) {
    return status;
  }
  Json list = Json::array();
  Counts counts;
  for (const Row& row : *rows) {
    const std::optional<Diagnosis> diagnosis = diagnosis_of(options, lesson, row, status);
    if (!diagnosis) {
      continue;
    }
    counts.add(row.problem, *diagnosis);
    if (options.json) {
      list.push_back(diagnosis_json(row, *diagnosis));
    } else {
      print_text(row, *diagnosis);
    }
  }
  if (options.json) {
    print_json({{"answers", std::move(list)}, {"counts", counts.json()}});
  } else {
    counts.print();
  }
  return status;
}

ExitStatus diagnose(const DiagnoseOptions& options) {
  const bool is_single = options.problem && options.answer;
  if (options.batch.empty() && !is_single) {
    std::cerr << "foldwright: diagnose needs --problem and --answer, or --batch with a file of both\n";
    return ExitStatus::WrongUsage;
  }
  ExitStatus status = ExitStatus::Done;
  const std::optional<lessons::Lesson> lesson = open_lesson(options.lesson, status);
  if (!lesson) {
    return status;
  }
  return options.batch.empty() ? diagnose_one(options, *lesson) : diagnose_batch(options, *lesson);
}

}  // namespace

void add_diagnose(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<DiagnoseOptions>();
  CLI::App* verb = app.add_subcommand("diagnose", "Says what a typed answer shows, and what to ask next");
  verb->add_option("LESSON", options->lesson, "The lesson file")->type_name(file_type)->required();
  CLI::Option* problem = verb->add_option("--problem", options->problem, "The id of the problem");
  CLI::Option* answer = verb->add_option("--answer", options->answer, "The answer, as it was typed");
  verb->add_option("--find", options->find, "Which of the things that the problem asks for; the first one otherwise");
  verb->add_option("--batch", options->batch, "A CSV file of answers: problem, answer")
      ->type_name(file_type)
      ->excludes(problem)
      ->excludes(answer);
  verb->add_flag("--json", options->json, "Print JSON for programs");
  verb->callback([options, &status] { status = diagnose(*options); });
}

}  // namespace fw::cli
