// What a school's copier makes of a page: black and white alone, a copy that blurs and then decides.
#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "paper/sheets/print.hpp"
#include "printing.hpp"

namespace fw::paper::copies_test {
namespace {

SheetOptions on_letter(bool is_large) {
  SheetOptions options;
  options.style.is_large = is_large;
  return options;
}

// A color would be another gray on each machine: so what is filled is black or white, and lines and texts are black.
TEST(Copies, NothingHangsOnAColorOrAGray) {
  for (const SheetKind& kind : sheet_kinds()) {
    for (const std::string& name : demo_lessons()) {
      for (const Page& page : made(kind.plan, test_fonts(), demo_lesson(name), on_letter(false)).pages) {
        for (const Item& item : page.items) {
          const auto* path = std::get_if<PathItem>(&item);
          const auto* circle = std::get_if<CircleItem>(&item);
          const std::optional<Color> fill = path != nullptr     ? path->fill
                                            : circle != nullptr ? circle->fill
                                                                : std::nullopt;
          EXPECT_TRUE(!fill || *fill == black || *fill == white) << kind.key << " " << name;
        }
      }
    }
  }
}

/// A picture of a page. Shape: width x height, 0 black to 1 white.
struct Gray {
  int width = 0, height = 0;
  std::vector<float> pixels = {};
  [[nodiscard]] float at(int x, int y) const {
    return pixels[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x)];
  }
};

constexpr double dpi = 300;

Gray rendered(const Page& page) {
  const PrintedFile file(pdf_file({page}, test_fonts(), "Copy"));
  EXPECT_EQ(ran("pdftoppm -r 300 -gray -singlefile " + file.path() + " " + file.folder() + "/p").status, 0);
  std::ifstream in(file.folder() + "/p.pgm", std::ios::binary);
  std::string kind;
  int most = 0;
  Gray gray;
  in >> kind >> gray.width >> gray.height >> most;
  in.get();
  const std::string bytes((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
  for (const char byte : bytes) {
    gray.pixels.push_back(static_cast<float>(static_cast<unsigned char>(byte)) / 255.0F);
  }
  return gray;
}

/// Blurred by a bell curve, one way after the other. `sigma`: in pixels.
Gray blurred(const Gray& gray, double sigma) {
  constexpr int reach = 4;
  std::array<float, 2 * reach + 1> bell{};
  double sum = 0;
  for (int i = -reach; i <= reach; ++i) {
    bell[static_cast<std::size_t>(i + reach)] = static_cast<float>(std::exp(-i * i / (2 * sigma * sigma)));
    sum += static_cast<double>(bell[static_cast<std::size_t>(i + reach)]);
  }
  const auto along = [&](const Gray& from, int dx, int dy) {
    Gray to{from.width, from.height, std::vector<float>(from.pixels.size(), 1.0F)};
    for (int y = reach; y < from.height - reach; ++y) {
      for (int x = reach; x < from.width - reach; ++x) {
        float all = 0;
        for (int i = -reach; i <= reach; ++i) {
          all += bell[static_cast<std::size_t>(i + reach)] * from.at(x + i * dx, y + i * dy);
        }
        to.pixels[static_cast<std::size_t>(y) * static_cast<std::size_t>(to.width) + static_cast<std::size_t>(x)] =
            all / static_cast<float>(sum);
      }
    }
    return to;
  };
  return along(along(gray, 1, 0), 0, 1);
}

/// The darkest and the lightest within a pixel of the place, which is given in millimeters.
std::pair<float, float> range_at(const Gray& gray, Vec2 place) {
  const int x = static_cast<int>(place.x / 25.4 * dpi);
  const int y = static_cast<int>(place.y / 25.4 * dpi);
  std::pair<float, float> range{1.0F, 0.0F};
  for (int dy = -1; dy <= 1; ++dy) {
    for (int dx = -1; dx <= 1; ++dx) {
      if (x + dx >= 0 && y + dy >= 0 && x + dx < gray.width && y + dy < gray.height) {
        range.first = std::min(range.first, gray.at(x + dx, y + dy));
        range.second = std::max(range.second, gray.at(x + dx, y + dy));
      }
    }
  }
  return range;
}

/// How many of its lines and gaps a page loses when it is copied.
struct Loss {
  std::size_t lines = 0, of_lines = 0, gaps = 0, of_gaps = 0;
};

Loss loss_of(const Page& page) {
  constexpr double copier = 1.4;  // pixels at 300 dpi; our own estimate, no source
  constexpr float half = 0.5F;
  constexpr double sure = 1.0;  // millimeters: a shorter piece may be the rest of a dash at its corner
  const Gray paper = rendered(page);
  const Gray copy = blurred(paper, copier);
  Loss loss;
  for (const Item& item : page.items) {
    const auto* path = std::get_if<PathItem>(&item);
    if (path == nullptr || !path->pen) {
      continue;
    }
    std::vector<Vec2> points = path->points;
    if (path->closed) {
      points.push_back(points.front());
    }
    const bool is_dashed = !path->pen->pattern.empty();
    const auto pieces = dashes(points, is_dashed ? path->pen->pattern : std::vector<double>{1e9, 1});
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      const auto& [from, to] = pieces[i];
      const double whole = is_dashed ? std::min(sure, path->pen->pattern.front()) : 0.1;
      const Vec2 middle = (from + to) / 2.0;
      if (glm::length(to - from) > whole - 1e-6 && range_at(paper, middle).first < half) {
        ++loss.of_lines;
        loss.lines += range_at(copy, middle).first >= half ? 1U : 0U;
      }
      const Vec2 gap = i + 1 < pieces.size() ? (to + pieces[i + 1].first) / 2.0 : middle;
      if (is_dashed && i + 1 < pieces.size() && range_at(paper, gap).first > 0.9F) {
        ++loss.of_gaps;
        loss.gaps += range_at(copy, gap).second < half ? 1U : 0U;
      }
    }
  }
  return loss;
}

// No line vanishes and no hatch or dash becomes solid.
TEST(Copies, KeepEveryLineAndEveryGapSlow) {
  const lessons::Lesson lesson = demo_lesson("lantern_market.json");
  std::size_t lines = 0;
  std::size_t gaps = 0;
  for (const SheetKind& kind : sheet_kinds()) {
    for (const WorkSpace work : {WorkSpace::Ruled, WorkSpace::Grid}) {
      if (work == WorkSpace::Grid && kind.key != "handout") {
        continue;
      }
      SheetOptions options = on_letter(false);
      options.work = work;
      const Printed printed = made(kind.plan, test_fonts(), lesson, options);
      const Loss loss = loss_of(printed.pages.front());
      EXPECT_EQ(loss.lines, 0U) << kind.key << ": of " << loss.of_lines;
      EXPECT_EQ(loss.gaps, 0U) << kind.key << ": of " << loss.of_gaps;
      lines += loss.of_lines;
      gaps += loss.of_gaps;
    }
  }
  EXPECT_GT(lines, 1000U);
  EXPECT_GT(gaps, 1000U);
}

}  // namespace
}  // namespace fw::paper::copies_test
