#include <CLI/CLI.hpp>
#include <iostream>
#include <memory>

#include "cli/json_output.hpp"
#include "cli/open_lesson.hpp"
#include "cli/text_table.hpp"
#include "cli/verbs/verbs.hpp"
#include "figures/face_style.hpp"
#include "reasoning/ledger.hpp"

namespace fw::cli {
namespace {

constexpr int places = 2;

struct Options {
  std::string lesson;
  std::string problem;
  bool json = false;
};

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

Json problem_json(const lessons::Problem& problem) {
  const solids::Solid& solid = problem.solid;
  Json faces = Json::array();
  for (const solids::Face& face : solid.faces()) {
    faces.push_back(face_json(face));
  }
  return {{"id", problem.id},
          {"name", solid.name()},
          {"vertices", solid.polyhedron().vertices().size()},
          {"edges", solid.polyhedron().edges().size()},
          {"faces", std::move(faces)},
          {"surface_area", quantity_json(solid.surface_area())},
          {"lateral_area", quantity_json(solid.lateral_area())},
          {"volume", quantity_json(solid.volume())}};
}

std::string equals(const std::string& quantity) { return quantity.rfind("≈", 0) == 0 ? quantity : "= " + quantity; }

std::string totals_text(const solids::Solid& solid) {
  std::vector<std::vector<std::string>> rows;
  rows.push_back({"surface area", "S " + equals(units::text(solid.surface_area(), places))});
  if (const std::optional<units::Area> area = solid.lateral_area()) {
    rows.push_back({"lateral area", "L " + equals(units::text(*area, places))});
  }
  rows.push_back({"volume", "V " + equals(units::text(solid.volume(), places))});
  return text_table(rows, {Align::Left, Align::Left}, 2);
}

std::string problem_text(const lessons::Problem& problem) {
  const solids::Solid& solid = problem.solid;
  const reasoning::Ledger ledger = reasoning::ledger(solid, {}, reasoning::Grouping::EachFace);
  std::vector<std::vector<std::string>> rows{{"face", "role", "shape", "group", "work", "area"}};
  for (const solids::Face& face : solid.faces()) {
    rows.push_back({std::to_string(face.id.index() + 1), role_text(face.role), face.shape,
                    figures::group_letter(face.group), ledger.rows[face.id.index()].work,
                    units::text(face.area, places)});
  }
  return problem.id + ": " + solid.name() + ", " + std::to_string(solid.faces().size()) + " faces, " +
         std::to_string(solid.polyhedron().edges().size()) + " edges, " +
         std::to_string(solid.polyhedron().vertices().size()) + " vertices\n" +
         text_table(rows, {Align::Right, Align::Left, Align::Left, Align::Left, Align::Left, Align::Right}, 2) +
         totals_text(solid);
}

ExitStatus measure(const Options& options) {
  ExitStatus status = ExitStatus::Done;
  const std::optional<lessons::Lesson> lesson = open_lesson(options.lesson, status);
  if (!lesson) {
    return status;
  }
  const std::vector<lessons::Problem> problems = chosen_problems(*lesson, options.lesson, options.problem, status);
  if (status != ExitStatus::Done) {
    return status;
  }
  if (options.json) {
    Json list = Json::array();
    for (const lessons::Problem& problem : problems) {
      list.push_back(problem_json(problem));
    }
    print_json({{"title", lesson->title}, {"problems", std::move(list)}});
    return status;
  }
  std::cout << lesson->title << '\n';
  for (const lessons::Problem& problem : problems) {
    std::cout << '\n' << problem_text(problem);
  }
  return status;
}

}  // namespace

void add_measure(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<Options>();
  CLI::App* verb = app.add_subcommand("measure", "Names each solid and lists its faces, areas and volume");
  verb->add_option("LESSON", options->lesson, "The lesson file")->required();
  verb->add_option("--problem", options->problem, "The id of the one problem to measure");
  verb->add_flag("--json", options->json, "Print JSON for programs");
  verb->callback([options, &status] { status = measure(*options); });
}

}  // namespace fw::cli
