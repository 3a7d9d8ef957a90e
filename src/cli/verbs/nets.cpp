#include <CLI/CLI.hpp>
#include <algorithm>
#include <iostream>
#include <memory>

#include "cli/arguments.hpp"
#include "cli/json_output.hpp"
#include "cli/open_lesson.hpp"
#include "cli/verbs/verbs.hpp"
#include "platform/clock.hpp"
#include "platform/environment.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::cli {
namespace {

struct NetsOptions {
  std::string lesson;
  std::optional<std::string> problem;
  bool count = false;
  bool json = false;
};

// Every labelled net is looked at once, so that counting more of them would take minutes.
constexpr double most_labelled = 60e6;
constexpr std::size_t most_listed = 200;

// Why the nets of a solid are not gone through; empty when they are.
std::string refusal(const solids::Solid& solid, bool all_of_them) {
  const solids::Body& body = solid.body();
  if (!solids::has_other_nets(body)) {
    return "";
  }
  if (!solids::can_list_nets(body)) {
    return "this solid has " + std::to_string(body.edge_count()) + " edges; nets are counted up to " +
           std::to_string(solids::most_edges_for_nets) + ".";
  }
  if (all_of_them && solids::labelled_count_estimate(body) > most_labelled) {
    return "this solid has " + solids::labelled_count(body) +
           " nets when every face is told apart; at most 60000000 are gone through.";
  }
  return "";
}

// The count, and once a second on the terminal how far it is.
nets::NetCount counted(const lessons::Problem& problem) {
  constexpr double every_seconds = 1;
  double told = platform::monotonic_seconds();
  const auto tell = [&](std::uint64_t distinct) {
    const double now = platform::monotonic_seconds();
    if (now - told >= every_seconds) {
      told = now;
      std::cerr << "foldwright: still counting the nets of " << problem.id << ": " << distinct << " so far\n";
    }
  };
  return solids::count_nets(problem.solid.body(),
                            platform::errors_go_to_a_terminal() ? nets::NetsSoFar(tell) : nets::NetsSoFar());
}

std::string counts_text(const solids::Solid& solid, const nets::NetCount& count) {
  return std::to_string(solid.faces().size()) + " faces, " + std::to_string(count.distinct) + " distinct nets (" +
         count.labelled + " when every face is told apart), " + std::to_string(count.overlapping) +
         " that overlap themselves";
}

std::size_t face_number(geometry::FaceId face) { return face.index() + 1; }

// The hinges of a net as pairs of face numbers.
std::vector<std::pair<std::size_t, std::size_t>> hinge_pairs(const solids::Solid& solid, const nets::HingeTree& net) {
  std::vector<std::pair<std::size_t, std::size_t>> pairs;
  for (const geometry::EdgeId hinge : net.hinges()) {
    const auto [left, right] = solid.body().faces_at(hinge);
    pairs.push_back({face_number(std::min(left, right)), face_number(std::max(left, right))});
  }
  return pairs;
}

nets::NetList listed(const solids::Solid& solid) {
  return solids::distinct_nets(solid.body(), solid.classic_net().root(), most_listed);
}

Json problem_json(const lessons::Problem& problem, bool count) {
  const solids::Solid& solid = problem.solid;
  Json json{{"id", problem.id}, {"faces", solid.faces().size()}};
  if (!solids::has_other_nets(solid.body())) {
    json["usual"] = true;
    return json;
  }
  if (count) {
    const nets::NetCount found = counted(problem);
    json["labelled"] = std::stoull(found.labelled);
    json["distinct"] = found.distinct;
    json["overlapping"] = found.overlapping;
    return json;
  }
  const nets::NetList list = listed(solid);
  json["complete"] = list.complete;
  json["nets"] = Json::array();
  for (const nets::HingeTree& net : list.nets) {
    Json hinges = Json::array();
    for (const auto& [one, other] : hinge_pairs(solid, net)) {
      hinges.push_back({one, other});
    }
    json["nets"].push_back(std::move(hinges));
  }
  return json;
}

std::string problem_text(const lessons::Problem& problem, bool count) {
  const solids::Solid& solid = problem.solid;
  const std::string head = problem.id + ": " + solid.name() + ", ";
  if (!solids::has_other_nets(solid.body())) {
    return head + "one usual net: cut the curved side straight and unroll it\n";
  }
  if (count) {
    return head + counts_text(solid, counted(problem)) + "\n";
  }
  const nets::NetList list = listed(solid);
  std::string text = head + (list.complete ? "" : "the first ") + std::to_string(list.nets.size()) +
                     " distinct nets, each as the pairs of faces that stay joined\n";
  std::size_t number = 0;
  for (const nets::HingeTree& net : list.nets) {
    text += "  " + std::to_string(++number) + ":";
    for (const auto& [one, other] : hinge_pairs(solid, net)) {
      text += " " + std::to_string(one) + "-" + std::to_string(other);
    }
    text += "\n";
  }
  return text;
}

ExitStatus list_nets(const NetsOptions& options) {
  ExitStatus status = ExitStatus::Done;
  const std::optional<lessons::Lesson> lesson = open_lesson(options.lesson, status);
  if (!lesson) {
    return status;
  }
  Json list = Json::array();
  const std::vector<lessons::Problem> problems = chosen_problems(*lesson, options.lesson, options.problem, status);
  for (const lessons::Problem& problem : problems) {
    const std::string reason = refusal(problem.solid, options.count);
    if (!reason.empty()) {
      std::cerr << "foldwright: " << options.lesson << ": problem " << problem.id << ": " << reason << '\n';
      status = worse(status, ExitStatus::WrongUsage);
    } else if (options.json) {
      list.push_back(problem_json(problem, options.count));
    } else {
      std::cout << problem_text(problem, options.count);
    }
  }
  if (options.json && !problems.empty()) {
    print_json({{"problems", std::move(list)}});
  }
  return status;
}

}  // namespace

void add_nets(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<NetsOptions>();
  CLI::App* verb = app.add_subcommand("nets", "Lists or counts the distinct nets of each solid of up to " +
                                                  std::to_string(solids::most_edges_for_nets) + " edges");
  verb->add_option("LESSON", options->lesson, "The lesson file")->type_name(file_type)->required();
  verb->add_option("--problem", options->problem, "The id of the one problem");
  verb->add_flag("--count", options->count,
                 "Count all nets, and those that overlap themselves: up to 60000000, every face told apart");
  verb->add_flag("--json", options->json, "Print JSON for programs");
  verb->callback([options, &status] { status = list_nets(*options); });
}

}  // namespace fw::cli
