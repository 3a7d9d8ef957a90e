#include "lessons/located_json.hpp"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <nlohmann/json.hpp>

#include "base/place.hpp"

namespace fw::lessons::located_json_test {
namespace {

using testing::ElementsAre;

std::vector<std::string> faults_of(std::string_view text) {
  const auto node = parse_located(text, 4);
  std::vector<std::string> lines;
  if (!node) {
    for (const JsonFault& fault : node.error()) {
      const Place place = place_of(text, fault.offset);
      lines.push_back(std::to_string(place.line) + ":" + std::to_string(place.column) + ": " + said(fault.message));
    }
  }
  return lines;
}

struct Broken {
  const char* text;
  const char* message;
};

class Syntax : public testing::TestWithParam<Broken> {};

TEST_P(Syntax, IsToldInPlainWords) { EXPECT_THAT(faults_of(GetParam().text), ElementsAre(GetParam().message)); }

INSTANTIATE_TEST_SUITE_P(
    Faults, Syntax,
    testing::Values(
        Broken{"", "1:1: the file is empty: a lesson starts with { and ends with }"},
        Broken{" \n ", "2:2: the file is empty: a lesson starts with { and ends with }"},
        Broken{"{", "1:2: a key in double quotation marks belongs here; found the end of the file"},
        Broken{"{\"a\": 1", "1:8: the file ends before the } that closes what is open"},
        Broken{"[1,\n 2", "2:3: the file ends before the ] that closes what is open"},
        Broken{"{\"a\": }", "1:7: a value belongs here (text in quotation marks, a number, [ or {); found \"}\""},
        Broken{"{\"a\":", "1:6: a value belongs here, but the file ends"},
        Broken{"{\"a\": 1,}", "1:8: no comma may stand before }: take it out"},
        Broken{"[1, 2, ]", "1:6: no comma may stand before ]: take it out"},
        Broken{"[1 2]", "1:4: a comma or ] belongs here; found \"2\""},
        Broken{"{\"a\": 1\n \"b\": 2}", "2:2: a comma or } belongs here; found a quotation mark"},
        Broken{"{a: 1}", "1:2: a key in double quotation marks belongs here; found \"a\""},
        Broken{"{\"a\" 1}", "1:6: a colon belongs after the key \"a\"; found \"1\""},
        Broken{"[True]", "1:2: a value belongs here (text in quotation marks, a number, [ or {); found \"True\""},
        Broken{"['a']", "1:2: text stands in double quotation marks, not in single ones"},
        Broken{"[1] // end", "1:5: the lesson ends before this, so nothing can come after it; found \"/\""},
        Broken{"[ // first\n 1]", "1:3: comments are not part of the format: take this one out"},
        Broken{"[.5]", "1:2: a number starts with a digit: write 0.5 for .5 and 3 for +3"},
        Broken{"[+3]", "1:2: a number starts with a digit: write 0.5 for .5 and 3 for +3"},
        Broken{"[012]", "1:2: a number does not start with an extra 0"},
        Broken{"[-]", "1:3: a digit belongs after the minus sign; found \"]\""},
        Broken{"[5.]", "1:4: a digit belongs after the decimal point; found \"]\""},
        Broken{"[5e]", "1:4: a digit belongs in the exponent; found \"]\""},
        Broken{"[\"abc]", "1:2: this text has no closing quotation mark"},
        Broken{"[\"a\nb\"]",
               "1:4: the line ends inside a text: close it with a quotation mark, or write \\n for a new line"},
        Broken{"[\"a\tb\"]",
               "1:4: a control character stands inside a text: write it with \\ (\\t for a tab), or take it out"},
        Broken{"[\"\\q\"]",
               "1:2: this text has a \\ that does not start a JSON character; write \\\\ for the mark itself"},
        Broken{"[\"\\ud800\"]",
               "1:2: this text has a \\ that does not start a JSON character; write \\\\ for the mark itself"},
        Broken{"[[[[[1]]]]]", "1:5: lists and objects are nested more than 4 deep here; a lesson needs far fewer"},
        Broken{"{\"a\": 1, \"a\": 2}", "1:10: the key \"a\" is here twice: keep one of them"},
        Broken{"[\"\xFF\"]", "1:3: the file is not text in UTF-8 from here on: save it in the encoding UTF-8"},
        Broken{"[\"\xC0\x80\"]", "1:3: the file is not text in UTF-8 from here on: save it in the encoding UTF-8"},
        Broken{"[\"\xED\xA0\x80\"]", "1:3: the file is not text in UTF-8 from here on: save it in the encoding UTF-8"},
        Broken{"[\"²\xE2\x82\"]", "1:4: the file is not text in UTF-8 from here on: save it in the encoding UTF-8"}));

TEST(LocatedJson, EveryDoubleKeyIsToldInOnePass) {
  EXPECT_THAT(faults_of("{\"a\": 1, \"a\": [{\"b\": 1, \"b\": 2}]}"),
              ElementsAre("1:10: the key \"a\" is here twice: keep one of them",
                          "1:25: the key \"b\" is here twice: keep one of them"));
}

TEST(LocatedJson, KnowsWhereEachValueStands) {
  const std::string text = "\xEF\xBB\xBF{\"a\": [true, \"x\\u00b2\"],\n \"b\": -2.50}";
  const auto root = parse_located(text, 4);
  ASSERT_TRUE(root.has_value());
  const JsonNode* list = root->find("a");
  ASSERT_NE(list, nullptr);
  EXPECT_EQ(list->items[0].text, "true");
  EXPECT_EQ(list->items[1].text, "x²");
  EXPECT_EQ(text.substr(list->items[1].offset, 2), "\"x");
  const JsonNode* number = root->find("b");
  ASSERT_NE(number, nullptr);
  EXPECT_EQ(number->text, "-2.50");
  EXPECT_EQ(place_of(text, number->offset), (Place{2, 7}));
  EXPECT_EQ(root->find("c"), nullptr);
}

// Texts of a few marks that often make sense together, and often do not.
rc::Gen<std::string> json_like() {
  const auto piece =
      rc::gen::element<std::string>("{", "}", "[", "]", ",", ":", "\"a\"", "\"", "1", "-", "0", ".5", "e1", "true",
                                    "null", " ", "\n", "\\", "²", "\"\\u00b2\"", "\"a\":1");
  return rc::gen::map(rc::gen::container<std::vector<std::string>>(piece), [](const std::vector<std::string>& pieces) {
    std::string text;
    for (const std::string& part : pieces) {
      text += part;
    }
    return text;
  });
}

// Outside truth: the grammar as nlohmann-json reads it.
RC_GTEST_PROP(LocatedJson, AcceptsWhatAnotherReaderAccepts, ()) {
  const std::string text = *json_like();
  const auto node = parse_located(text, 100);
  bool has_double_keys = false;
  if (!node) {
    for (const JsonFault& fault : node.error()) {
      has_double_keys = has_double_keys || said(fault.message).find("stands twice") != std::string::npos;
    }
  }
  if (!has_double_keys) {
    RC_ASSERT(node.has_value() == nlohmann::json::accept(text));
  }
}

TEST(LocatedJson, QuotesLongTextCut) {
  EXPECT_EQ(in_quotes("9 cm"), "\"9 cm\"");
  EXPECT_EQ(in_quotes(std::string(41, 'x')), "\"" + std::string(40, 'x') + "…\"");
  EXPECT_EQ(in_quotes("a\nb"), "\"a b\"");
}

}  // namespace
}  // namespace fw::lessons::located_json_test
