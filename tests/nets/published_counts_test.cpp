#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "geometry/symmetry.hpp"
#include "nets/enumerate.hpp"
#include "nets/published_solids.hpp"
#include "nets/random_tree.hpp"

namespace fw::nets::published_counts_test {
namespace {

// Sources of the figures: the head of tests/published/nets.tsv.
struct PublishedRow {
  std::string solid;
  std::size_t vertices = 0, edges = 0, faces = 0, symmetry_count = 0;
  std::string labelled, mirrors_once, mirrors_twice;
};
std::ostream& operator<<(std::ostream& out, const PublishedRow& row) { return out << row.solid; }

std::vector<PublishedRow> published_rows() {
  std::ifstream file(FOLDWRIGHT_SOURCE_DIR "/tests/published/nets.tsv");
  std::vector<PublishedRow> rows;
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line.front() == '#') {
      continue;
    }
    std::istringstream cells(line);
    PublishedRow row;
    std::getline(cells, row.solid, '\t');
    cells >> row.vertices >> row.edges >> row.faces >> row.symmetry_count;
    cells >> row.labelled >> row.mirrors_once >> row.mirrors_twice;
    rows.push_back(row);
  }
  return rows;
}

std::string test_name(const testing::TestParamInfo<PublishedRow>& info) {
  std::string name;
  for (const char letter : info.param.solid) {
    name += std::isalnum(static_cast<unsigned char>(letter)) != 0 ? letter : '_';
  }
  return name;
}

class PublishedCounts : public testing::TestWithParam<PublishedRow> {
 protected:
  [[nodiscard]] static Polyhedron solid() { return test::published_solids().at(GetParam().solid)(); }
};

TEST_P(PublishedCounts, shape_and_symmetries) {
  const Polyhedron polyhedron = solid();
  EXPECT_EQ(polyhedron.vertices().size(), GetParam().vertices);
  EXPECT_EQ(polyhedron.edges().size(), GetParam().edges);
  EXPECT_EQ(polyhedron.faces().size(), GetParam().faces);
  EXPECT_EQ(geometry::symmetries(polyhedron).size(), GetParam().symmetry_count);
}

TEST_P(PublishedCounts, labelled) {
  const Polyhedron polyhedron = solid();
  EXPECT_EQ(labelled_count(polyhedron), GetParam().labelled);
  EXPECT_NEAR(labelled_count_estimate(polyhedron) / std::stod(GetParam().labelled), 1, 1e-12);
}

// The labelled count alone is compared where there are more than so many, but for the two great regular solids.
constexpr double most_listed = 420'000;

void expect_distinct_counts(const Polyhedron& polyhedron, const PublishedRow& row) {
  const std::vector<geometry::Symmetry> symmetries = geometry::symmetries(polyhedron);
  std::uint64_t once = 0;
  std::uint64_t twice = 0;
  std::uint64_t labelled = 0;
  for_each_distinct_net(polyhedron, [&](std::uint64_t hinges) {
    std::size_t kept = 0;
    std::size_t kept_by_flips = 0;
    bool has_flips = false;
    for (const geometry::Symmetry& symmetry : symmetries) {
      std::uint64_t image = 0;
      for (std::size_t e = 0; e < polyhedron.edges().size(); ++e) {
        image |= ((hinges >> e) & 1U) << symmetry.edge[EdgeId::at(e)].index();
      }
      kept += image == hinges ? 1U : 0U;
      kept_by_flips += image == hinges && symmetry.is_reflection ? 1U : 0U;
      has_flips = has_flips || symmetry.is_reflection;
    }
    once += 1;
    twice += has_flips && kept_by_flips == 0 ? 2U : 1U;
    labelled += symmetries.size() / kept;  // Source: the orbit-stabilizer theorem.
    return true;
  });
  EXPECT_EQ(std::to_string(once), row.mirrors_once);
  EXPECT_EQ(std::to_string(twice), row.mirrors_twice);
  EXPECT_EQ(std::to_string(labelled), row.labelled);
}

TEST_P(PublishedCounts, distinct) {
  if (std::stod(GetParam().labelled) <= most_listed) {
    expect_distinct_counts(solid(), GetParam());
  }
}

TEST(PublishedCountsSlow, distinct_of_the_dodecahedron_and_the_icosahedron) {
  for (const PublishedRow& row : published_rows()) {
    if (row.solid == "dodecahedron" || row.solid == "icosahedron") {
      expect_distinct_counts(test::published_solids().at(row.solid)(), row);
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Solids, PublishedCounts, testing::ValuesIn(published_rows()), test_name);

TEST(PublishedFile, has_all_the_solids_that_are_built) {
  std::size_t found = 0;
  for (const PublishedRow& row : published_rows()) {
    found += test::published_solids().count(row.solid);
  }
  EXPECT_EQ(found, published_rows().size());
  EXPECT_GE(found, 90U);
}

}  // namespace
}  // namespace fw::nets::published_counts_test
