// Lesson files as they lie in the project: demo lessons, lessons of version 1 that must be read forever, bad lessons.
#include <gmock/gmock.h>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "lesson_texts.hpp"
#include "lessons/write_lesson.hpp"
#include "solids/catalog.hpp"

namespace fw::lessons::lesson_files_test {
namespace {

namespace fs = std::filesystem;

const fs::path root = FOLDWRIGHT_SOURCE_DIR;
const fs::path schema = root / "demo_scenes" / "lesson.schema.json";

std::string contents(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

std::vector<fs::path> lessons_in(const fs::path& folder) {
  std::vector<fs::path> paths;
  for (const auto& entry : fs::directory_iterator(folder)) {
    const std::string name = entry.path().filename().string();
    if (entry.path().extension() == ".json" && name.find(".schema.") == std::string::npos) {
      paths.push_back(entry.path());
    }
  }
  std::sort(paths.begin(), paths.end());
  return paths;
}

// What the JSON Schema library of the system says of a file; empty when the file keeps to the schema.
std::string breaks_of_schema(const fs::path& path) {
  const std::string command = "/usr/bin/python3 '" + (root / "tests/lessons/hold_to_schema.py").string() + "' '" +
                              schema.string() + "' '" + path.string() + "' 2>&1";
  std::string output;
  FILE* pipe = popen(command.c_str(), "r");
  EXPECT_NE(pipe, nullptr);
  char buffer[256];
  while (pipe != nullptr && std::fgets(buffer, sizeof buffer, pipe) != nullptr) {
    output += buffer;
  }
  const int status = pipe == nullptr ? -1 : pclose(pipe);
  return status == 0 ? output : output + "(status " + std::to_string(status) + ")";
}

class GoodFile : public testing::TestWithParam<fs::path> {};

TEST_P(GoodFile, IsReadAndWrittenBackWithoutLoss) {
  const auto lesson = read_lesson(contents(GetParam()));
  ASSERT_TRUE(lesson.has_value()) << testing::PrintToString(told(lesson.error()));
  const auto again = read_lesson(write_lesson(*lesson));
  ASSERT_TRUE(again.has_value()) << testing::PrintToString(told(again.error()));
  EXPECT_EQ(*again, *lesson);
}

TEST_P(GoodFile, KeepsToTheSchema) { EXPECT_EQ(breaks_of_schema(GetParam()), ""); }

std::string file_name(const testing::TestParamInfo<fs::path>& info) { return info.param.stem().string(); }

INSTANTIATE_TEST_SUITE_P(Demo, GoodFile, testing::ValuesIn(lessons_in(root / "demo_scenes")), file_name);
INSTANTIATE_TEST_SUITE_P(Kept, GoodFile, testing::ValuesIn(lessons_in(root / "tests/lessons/kept")), file_name);

TEST(DemoLessons, HoldNoMistakeThatGivesTheRightNumber) {
  for (const fs::path& path : lessons_in(root / "demo_scenes")) {
    for (const Finding& finding : findings_of(contents(path))) {
      EXPECT_NE(finding.kind, Finding::Kind::Masking) << text(finding, path.string());
    }
  }
}

TEST(DemoLessons, UseEveryKindAndEveryBaseShape) {
  std::set<std::string> used;
  for (const fs::path& path : lessons_in(root / "demo_scenes")) {
    const auto lesson = read_lesson(contents(path));
    ASSERT_TRUE(lesson.has_value()) << path;
    for (const Problem& problem : lesson->problems) {
      used.insert(problem.description.kind);
      for (const solids::Description& base : problem.description.base) {
        used.insert(base.kind);
      }
      const auto faces = problem.description.fields.find("faces");
      if (faces != problem.description.fields.end()) {
        used.insert(std::to_string(std::get<int>(faces->second)) + " faces");
      }
    }
  }
  for (const solids::Kind& kind : solids::kinds()) {
    EXPECT_EQ(used.count(kind.key), 1U) << kind.key;
  }
  for (const solids::ShapeKind& shape : solids::base_shapes()) {
    EXPECT_EQ(used.count(shape.key), 1U) << shape.key;
  }
  for (const int faces : {4, 6, 8, 12, 20}) {
    EXPECT_EQ(used.count(std::to_string(faces) + " faces"), 1U) << faces;
  }
}

// The schema's alternatives and the program's tables must name the same fields.
template <class Row>
void expect_same_fields(const nlohmann::json& alternatives, const std::string& word, const std::vector<Row>& rows,
                        const std::set<std::string>& more) {
  ASSERT_EQ(alternatives.size(), rows.size());
  for (const Row& row : rows) {
    std::set<std::string> fields{word};
    for (const solids::Field& field : row.fields) {
      fields.insert(field.key);
    }
    std::set<std::string> stated;
    for (const nlohmann::json& alternative : alternatives) {
      if (alternative["properties"][word]["const"] == row.key) {
        for (const auto& [key, value] : alternative["properties"].items()) {
          stated.insert(more.count(key) == 0 ? key : word);
        }
      }
    }
    EXPECT_EQ(stated, fields) << row.key;
  }
}

TEST(Schema, StatesTheFieldsThatTheProgramReads) {
  const nlohmann::json document = nlohmann::json::parse(contents(schema));
  expect_same_fields(document["$defs"]["solid"]["oneOf"], "kind", solids::kinds(), {"base", "rounded"});
  expect_same_fields(document["$defs"]["base"]["oneOf"], "shape", solids::base_shapes(), {});
  EXPECT_EQ(document["properties"]["problems"]["maxItems"], limits::problems);
}

TEST(Schema, RefusesWhatTheReaderRefusesInForm) {
  const fs::path path = fs::path(testing::TempDir()) / "refused_lesson.json";
  for (const std::string& bad :
       {lesson_with(R"(, "note": "x")"), lesson_with(R"(, "find": [])"), lesson_with_solid(R"({"kind": "piramid"})"),
        lesson_with_solid(R"({"kind": "cube", "edge": 7})"), lesson_with(R"(, "net": {"ask": "is_it"})"),
        lesson_with(R"(, "net": {"ask": "is_it", "pieces": [{"face": 1}, 2]})"),
        lesson_with(R"(, "net": {"ask": "is_it", "pieces": [{"face": 1}, {"face": 3}]})"),
        lesson_with(R"(, "net": {"ask": "is_it", "pieces": [{"face": 1, "unit": "cm"}]})"),
        lesson_with(R"(, "find": ["volume"], "net": {"ask": "is_it", "pieces": [{"face": 1}]})"),
        lesson_with(R"(, "net": {"ask": "is_it", "pieces": [{"face": 1}], "places": []})"),
        std::string(R"({"lesson": 2, "title": "T", "problems": []})")}) {
    std::ofstream(path) << bad;
    EXPECT_NE(breaks_of_schema(path), "") << bad;
    EXPECT_THAT(errors_of(bad), testing::Not(testing::IsEmpty())) << bad;
  }
  std::ofstream(path) << lesson_with("");
  EXPECT_EQ(breaks_of_schema(path), "");
  fs::remove(path);
}

// Each kept input of the fuzz target: refused with a place inside the text, or read and written back.
TEST(FuzzCorpus, IsAnsweredEachTime) {
  std::size_t refused = 0;
  for (const auto& entry : fs::directory_iterator(root / "tests/fuzz/corpus")) {
    const std::string lesson_text = contents(entry.path());
    const auto lesson = read_lesson(lesson_text);
    if (lesson) {
      const auto again = read_lesson(write_lesson(*lesson));
      ASSERT_TRUE(again.has_value()) << entry.path();
      EXPECT_EQ(*again, *lesson) << entry.path();
      continue;
    }
    ++refused;
    const Place end = place_of(lesson_text, lesson_text.size());
    for (const Finding& finding : lesson.error()) {
      EXPECT_LE(finding.place.line, end.line) << entry.path();
      EXPECT_FALSE(finding.message.empty()) << entry.path();
    }
  }
  EXPECT_GE(refused, 20U);
}

}  // namespace
}  // namespace fw::lessons::lesson_files_test
