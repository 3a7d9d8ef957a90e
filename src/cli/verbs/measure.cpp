#include <CLI/CLI.hpp>
#include <iostream>
#include <memory>

#include "cli/arguments.hpp"
#include "cli/json_output.hpp"
#include "cli/open_lesson.hpp"
#include "cli/text_table.hpp"
#include "cli/verbs/verbs.hpp"
#include "exact/print_number.hpp"
#include "figures/face_style.hpp"
#include "lessons/open_faces.hpp"
#include "reasoning/ledger.hpp"
#include "tasks/word_problems/word_problem.hpp"
#include "words/message.hpp"

namespace fw::cli {
namespace {

constexpr int places = 2;

struct MeasureOptions {
  std::string lesson;
  std::optional<std::string> problem;
  bool json = false;
};

/// "1 edge", "8 edges".
std::string amount_of(std::size_t count, const std::string& noun) {
  return words::said(words::message("{count} {noun#count}", {{"count", count}, {"noun", words::Noun{noun}}}));
}

std::string role_text(solids::FaceRole role) {
  switch (role) {
    case solids::FaceRole::Base:
      return "base";
    case solids::FaceRole::Lateral:
      return "lateral";
    case solids::FaceRole::Face:
      return "face";
  }
  return "";
}

Json face_json(const solids::Face& face) {
  return {{"number", face.id.index() + 1},
          {"role", role_text(face.role)},
          {"shape", face.shape},
          {"group", figures::group_letter(face.group)},
          {"area", quantity_json(face.area)}};
}

Json numbers_json(const std::vector<reasoning::FaceId>& faces) {
  Json numbers = Json::array();
  for (const reasoning::FaceId face : faces) {
    numbers.push_back(face.index() + 1);
  }
  return numbers;
}

Json supply_json(const reasoning::SupplyWork& work) {
  Json json = {{"decision", lessons::word_of(work.decision.purpose)},
               {"faces", numbers_json(work.faces)},
               {"amount", quantity_json(reasoning::amount_number(work.amount), reasoning::amount_unit(work.amount))}};
  if (work.answer) {
    const reasoning::SupplyAnswer& answer = *work.answer;
    const std::string count = exact::exact_text(answer.count);
    json["count"] = {{"exact", count.empty() ? Json(nullptr) : Json(count)}, {"value", answer.count.to_double()}};
    json["text"] = said(answer.text);
    json["leftover"] = answer.leftover ? quantity_json(answer.leftover->amount, answer.leftover->unit) : Json(nullptr);
    json["cost"] = answer.cost ? Json(answer.cost_text) : Json(nullptr);
  }
  return json;
}

// What a problem adds to its solid: the faces that do not count, and the supply.
void add_problem_parts(const lessons::Problem& problem, Json& json) {
  if (!problem.open.empty()) {
    const reasoning::AmountSum sum = reasoning::faces_that_count(problem, "surface_area", places);
    json["open"] = numbers_json(lessons::open_faces(problem));
    json["open_surface_area"] = quantity_json(sum.total, sum.unit);
  }
  if (const std::optional<reasoning::SupplyWork> work = tasks::supply_work(problem, places)) {
    json["supply"] = supply_json(*work);
  }
}

Json problem_json(const lessons::Problem& problem) {
  const solids::Solid& solid = problem.solid;
  Json faces = Json::array();
  for (const solids::Face& face : solid.faces()) {
    faces.push_back(face_json(face));
  }
  Json json = {{"id", problem.id},
               {"name", solid.name()},
               {"vertices", solid.body().vertex_count()},
               {"edges", solid.body().edge_count()},
               {"faces", std::move(faces)},
               {"surface_area", quantity_json(solid.surface_area())},
               {"lateral_area", quantity_json(solid.lateral_area())},
               {"volume", quantity_json(solid.volume())}};
  for (const solids::Fault& remark : solid.remarks()) {
    if (remark.severity == solids::Severity::Missing) {
      json["assumed"].push_back(said(remark.message));
    }
  }
  add_problem_parts(problem, json);
  return json;
}

std::string equals(const std::string& quantity) { return quantity.rfind("≈", 0) == 0 ? quantity : "= " + quantity; }

std::string totals_text(const lessons::Problem& problem) {
  const solids::Solid& solid = problem.solid;
  std::vector<std::vector<std::string>> rows;
  rows.push_back({"surface area", "S " + equals(units::text(solid.surface_area(), places))});
  if (const std::optional<units::Area> area = solid.lateral_area()) {
    rows.push_back({"lateral area", "L " + equals(units::text(*area, places))});
  }
  rows.push_back({"volume", "V " + equals(units::text(solid.volume(), places))});
  if (!problem.open.empty()) {
    const reasoning::AmountSum sum = reasoning::faces_that_count(problem, "surface_area", places);
    rows.push_back({"open", std::to_string(sum.faces.size()) + " of " + std::to_string(solid.faces().size()) + " " +
                                solid.part() + "s count: " + algebra::plain_text(sum.line)});
  }
  if (const std::optional<reasoning::SupplyWork> work = tasks::supply_work(problem, places)) {
    rows.push_back({lessons::word_of(work->decision.purpose),
                    work->title + " " + equals(reasoning::amount_text(work->amount, places))});
    if (work->answer) {
      rows.push_back({"answer", words::said(work->answer->sentence)});
    }
  }
  for (const solids::Fault& remark : solid.remarks()) {
    if (remark.severity == solids::Severity::Missing) {
      rows.push_back({"assumed", said(remark.message)});
    }
  }
  return text_table(rows, {Align::Left, Align::Left}, 2);
}

std::string problem_text(const lessons::Problem& problem) {
  const solids::Solid& solid = problem.solid;
  const reasoning::Ledger ledger = reasoning::ledger(solid, {}, reasoning::Grouping::EachFace);
  std::vector<std::vector<std::string>> rows{{solid.part(), "role", "shape", "group", "work", "area"}};
  for (const solids::Face& face : solid.faces()) {
    rows.push_back({std::to_string(face.id.index() + 1), role_text(face.role), face.shape,
                    figures::group_letter(face.group), ledger.rows[face.id.index()].work,
                    units::text(face.area, places)});
  }
  return problem.id + ": " + solid.name() + ", " + amount_of(solid.faces().size(), solid.part()) + ", " +
         amount_of(solid.body().edge_count(), "edge") + ", " + amount_of(solid.body().vertex_count(), "vertex") + "\n" +
         text_table(rows, {Align::Right, Align::Left, Align::Left, Align::Left, Align::Left, Align::Right}, 2) +
         totals_text(problem);
}

ExitStatus measure(const MeasureOptions& options) {
  ExitStatus status = ExitStatus::Done;
  const std::optional<ChosenProblems> chosen = open_problems(options.lesson, options.problem, status);
  if (!chosen) {
    return status;
  }
  if (options.json) {
    Json list = Json::array();
    for (const lessons::Problem& problem : chosen->problems) {
      list.push_back(problem_json(problem));
    }
    print_json({{"title", chosen->lesson.title}, {"problems", std::move(list)}});
    return status;
  }
  std::cout << chosen->lesson.title << '\n';
  for (const lessons::Problem& problem : chosen->problems) {
    std::cout << '\n' << problem_text(problem);
  }
  return status;
}

}  // namespace

void add_measure(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<MeasureOptions>();
  CLI::App* verb = app.add_subcommand("measure", "Names each solid and lists its faces, areas and volume");
  verb->add_option("LESSON", options->lesson, "The lesson file")->type_name(file_type)->required();
  verb->add_option("--problem", options->problem, "The id of the one problem to measure");
  verb->add_flag("--json", options->json, "Print JSON for programs");
  verb->callback([options, &status] { status = measure(*options); });
}

}  // namespace fw::cli
