#include "practice/face_account.hpp"

#include <algorithm>
#include <cstdlib>

#include "exact/print_number.hpp"
#include "practice/choice_parts.hpp"

namespace fw::practice {
namespace {

using words::message;

struct Kind {
  double area = 0;
  int right = 0;
  std::vector<FaceId> faces;
};

std::vector<Kind> kinds_of(const Figure& figure) {
  std::vector<Kind> kinds;
  std::vector<solids::GroupId> groups;
  for (const FigureFace& face : figure.faces) {
    const auto found = std::find(groups.begin(), groups.end(), face.group);
    const auto row = static_cast<std::size_t>(found - groups.begin());
    if (found == groups.end()) {
      groups.push_back(face.group);
      kinds.push_back({face.area, 0, {}});
    }
    kinds[row].right += face.counts ? 1 : 0;
    kinds[row].faces.push_back(face.id);
  }
  return kinds;
}

FaceChange change_of(const Kind& kind, int by) { return {kind.faces, kind.right, kind.right + by, {}}; }

words::Message times(int count) {
  return count == 0   ? message("not at all")
         : count == 1 ? message("once")
         : count == 2 ? message("twice")
                      : message("{count} times", {{"count", count}});
}

}  // namespace

std::vector<FaceChange> face_account(const Figure& figure, const exact::Written& typed) {
  const std::vector<Kind> kinds = kinds_of(figure);
  const auto fits = [&](double sum) { return sum > 0 && stands_for(typed, sum); };
  const auto allowed = [&](std::size_t i, int by) { return kinds[i].right + by >= 0; };
  std::vector<std::vector<FaceChange>> found;
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    for (const int by : {-1, 1}) {
      if (allowed(i, by) && fits(figure.truth + by * kinds[i].area)) {
        found.push_back({change_of(kinds[i], by)});
      }
    }
  }
  for (std::size_t i = 0; i < kinds.size() && found.empty(); ++i) {
    for (std::size_t k = i; k < kinds.size(); ++k) {
      for (const int by_i : {-1, 1}) {
        for (const int by_k : {-1, 1}) {
          const bool is_one_kind = i == k;
          const int together = is_one_kind ? 2 * by_i : by_i;
          if ((is_one_kind && by_i != by_k) || !allowed(i, together) || !allowed(k, is_one_kind ? together : by_k) ||
              !fits(figure.truth + by_i * kinds[i].area + by_k * kinds[k].area)) {
            continue;
          }
          found.push_back(is_one_kind ? std::vector<FaceChange>{change_of(kinds[i], together)}
                                      : std::vector<FaceChange>{change_of(kinds[i], by_i), change_of(kinds[k], by_k)});
        }
      }
    }
  }
  if (found.size() != 1) {
    return {};
  }
  for (FaceChange& change : found.front()) {
    const units::Area& area = figure.problem->solid.faces()[change.faces.front()].area;
    change.area = amount_shown(exact::shown(area.amount(), 2), figure.question->unit);
  }
  return found.front();
}

std::vector<words::Message> account_told(const std::vector<FaceChange>& changes) {
  std::vector<words::Message> told;
  told.reserve(changes.size());
  for (const FaceChange& change : changes) {
    told.push_back(message("the face of {area} {counted}, not {right}",
                           {{"area", change.area},
                            {"counted", times(change.counted)},
                            {"right", change.right == 0 ? message("left out") : times(change.right)}}));
  }
  return told;
}

}  // namespace fw::practice
