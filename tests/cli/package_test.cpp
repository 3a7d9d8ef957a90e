// What an installed program brings: the man page and the completions against what --help says, and the files for the
// desktop against each other.
#include <gmock/gmock.h>

#include <regex>
#include <set>

#include "cli/guide/guide.hpp"
#include "cli/version.hpp"
#include "program.hpp"

namespace fw::cli::package_test {
namespace {

using testing::HasSubstr;
using testing::Not;

const std::string package_folder = FOLDWRIGHT_SOURCE_DIR "/src/cmake/package/";
const std::string app_id = "org.foldwright.foldwright";

std::set<std::string> matches(const std::string& text, const char* pattern) {
  std::set<std::string> found;
  const std::regex regex(pattern);
  for (std::sregex_iterator it(text.begin(), text.end(), regex), end; it != end; ++it) {
    found.insert((*it)[1]);
  }
  return found;
}

std::string first_match(const std::string& text, const char* pattern) {
  const std::set<std::string> found = matches(text, pattern);
  return found.size() == 1 ? *found.begin() : "not once: " + std::to_string(found.size());
}

/// The verbs that the program itself lists.
std::set<std::string> told_verbs() {
  const std::string help = run_program("--help").out;
  return matches(help.substr(help.find("Subcommands:")), "\n  ([a-z]+) ");
}
/// The options that the program itself lists for a verb, "--json", "-o" and so on.
std::set<std::string> told_options(const std::string& verb) {
  const std::string help = run_program(verb + " --help").out;
  std::set<std::string> names = matches(help, "\n  -[a-zA-Z],(--[a-z-]+)");
  names.merge(matches(help, "\n  (-[a-zA-Z]),"));
  names.merge(matches(help, "\n  (--[a-z-]+)"));
  return names;
}

/// What a text says from one mark to the next one; empty where the first is not there.
std::string between(const std::string& text, const std::string& begin, const std::string& end) {
  const std::size_t at = text.find(begin);
  return at == std::string::npos ? "" : text.substr(at, text.find(end, at + begin.size()) - at);
}

std::string without_backslashes(std::string text) {
  text.erase(std::remove(text.begin(), text.end(), '\\'), text.end());
  return text;
}

std::set<std::string> bash_words(const std::string& branch) {
  std::set<std::string> names;
  for (const std::string& list : matches(branch, "\\*\\) options='([^']*)'")) {
    names = matches(list + " ", "(-[a-zA-Z-]+) ");
  }
  return names;
}

TEST(Guide, NamesEveryVerbAndOptionOfTheProgram) {
  const ProgramHelp help = program_help();
  const std::string page = without_backslashes(man_page(help, "2026-11-30"));
  const std::string bash = bash_completion(help);
  const std::string zsh = zsh_completion(help);
  const std::string fish = fish_completion(help);
  const std::set<std::string> verbs = told_verbs();
  EXPECT_GE(verbs.size(), 10U);
  EXPECT_EQ(matches(page, "\n.SS (?:\")?([a-z]+)"), verbs);
  EXPECT_EQ(matches(bash, "\n    ([a-z]+)\\)\n"), verbs);
  EXPECT_EQ(matches(zsh, "\n    ([a-z]+)\\)\n"), verbs);
  EXPECT_EQ(matches(fish, "__fish_use_subcommand' -a ([a-z]+) "), verbs);
  for (const std::string& verb : verbs) {
    const std::set<std::string> options = told_options(verb);
    EXPECT_GE(options.size(), 3U) << verb;
    std::string section = between(page, "\n.SS \"" + verb + "\"", "\n.S");
    EXPECT_EQ(matches(section, "fB(--?[a-zA-Z-]+)fR"), options) << verb;
    EXPECT_EQ(bash_words(between(bash, "\n    " + verb + ")\n", "esac")), options) << verb;
    EXPECT_EQ(matches(between(zsh, "\n    " + verb + ")\n", ";;"), "\n *'\\*?(--?[a-zA-Z-]+)\\["), options) << verb;
    std::set<std::string> in_fish;
    for (const std::string& name : matches(fish, ("from " + verb + "'(?: -s .)? -l ([a-z-]+)").c_str())) {
      in_fish.insert("--" + name);
    }
    for (const std::string& name : matches(fish, ("from " + verb + "' -s (.)").c_str())) {
      in_fish.insert("-" + name);
    }
    EXPECT_EQ(in_fish, options) << verb;
  }
}

TEST(Guide, OffersTheWordsThatAnOptionTakes) {
  const ProgramHelp help = program_help();
  EXPECT_THAT(bash_completion(help), HasSubstr("--route) words='faces formula both'; options= ;;"));
  EXPECT_THAT(bash_completion(help), HasSubstr("-o|--output) files=yes ;;"));
  EXPECT_THAT(zsh_completion(help),
              HasSubstr("'--route[By formula, face by face, or both]:TEXT:(faces formula both)'"));
  EXPECT_THAT(fish_completion(help), HasSubstr("-l route -x -a 'faces formula both' -d 'By formula,"));
  EXPECT_THAT(without_backslashes(man_page(help, "")), HasSubstr("fB--routefR fIfaces|formula|bothfR"));
}

// A shell itself takes the script: what may follow "foldwright explain x --route".
TEST(Guide, BashCompletes) {
  const Folder folder;
  const std::string script = folder.file("foldwright.bash", bash_completion(program_help()));
  const auto completed = [&](const std::string& words, int at) {
    const std::string command =
        "bash -c '. " + script + "; COMP_WORDS=(" + words + "); COMP_CWORD=" + std::to_string(at) +
        "; compopt() { :; }; _foldwright; echo ${COMPREPLY[*]}' >" + folder.path("out") + " 2>&1";
    EXPECT_EQ(std::system(command.c_str()), 0);
    return contents(folder.path("out"));
  };
  EXPECT_EQ(completed("foldwright me", 1), "measure\n");
  EXPECT_EQ(completed("foldwright --li", 1), "--licenses\n");
  EXPECT_EQ(completed("foldwright explain a.json --route f", 4), "faces formula\n");
  EXPECT_EQ(completed("foldwright explain --no", 2), "--notation\n");
  EXPECT_EQ(completed("foldwright check " + folder.path("foldwr"), 2), script + "\n");
}

TEST(Guide, ManPageKeepsSignsOfItsFormatOut) {
  ProgramHelp help;
  help.says = ".begins with a dot \\ and a \"quote\"";
  help.verbs = {{"verb", "says\n  'two lines", {}, {}}};
  const std::string page = man_page(help, "2026-11-30");
  EXPECT_THAT(page, HasSubstr("\n\\&.begins with a dot \\e and a \\(dqquote\\(dq\n"));
  EXPECT_THAT(page, HasSubstr("\nsays\n.br\n\\&'two lines.\n"));
}

TEST(Desktop, FilesAgreeWithEachOther) {
  const std::string desktop = contents(package_folder + app_id + ".desktop");
  const std::string mime = contents(package_folder + app_id + ".mime.xml");
  const std::string about = contents(package_folder + app_id + ".metainfo.xml");
  EXPECT_EQ(first_match(about, "<id>([^<]*)</id>"), app_id);
  EXPECT_EQ(first_match(about, "desktop-id\">([^<]*)<"), app_id + ".desktop");
  const std::string type = first_match(mime, "mime-type type=\"([^\"]*)\"");
  EXPECT_EQ(first_match(desktop, "\nMimeType=([^;\n]*);\n"), type);
  EXPECT_EQ(first_match(about, "<mediatype>([^<]*)<"), type);
  const std::string icon = first_match(desktop, "\nIcon=([^\n]*)\n");
  EXPECT_EQ(first_match(about, "type=\"stock\">([^<]*)<"), icon);
  EXPECT_EQ(first_match(mime, "<icon name=\"([^\"]*)\""), icon);
  EXPECT_THAT(contents(package_folder + icon + ".svg"), HasSubstr("<svg"));
  EXPECT_EQ(first_match(about, "<summary>([^<]*)<"), first_match(desktop, "\nComment=([^\n]*)\n"));
  EXPECT_EQ(first_match(desktop, "\nExec=([^\n]*)\n"), "foldwright show %f");
  EXPECT_EQ(first_match(mime, "glob pattern=\"([^\"]*)\""), "*.foldwright.json");
}

TEST(Desktop, ReleaseIsTheProgramsVersionEverywhere) {
  const std::string about = contents(package_folder + app_id + ".metainfo.xml");
  const std::string changes = contents(package_folder + "changelog");
  EXPECT_THAT(about, HasSubstr(std::string("<release version=\"") + version + "\" date=\""));
  EXPECT_EQ(changes.rfind(std::string("foldwright (") + version + ") ", 0), 0U) << changes;
  const std::string day = first_match(about.substr(about.find("<release ")), "date=\"[0-9]{4}-[0-9]{2}-0?([0-9]+)\"");
  EXPECT_EQ(first_match(changes.substr(0, changes.find("\n\n --") + 200), ">  [A-Z][a-z]{2}, 0?([0-9]+) "), day);
}

// The file manager gives the path as one argument, whatever stands in it; without one, the demo lesson opens. There is
// no display here, and the lesson is read before the window: so what is told says which lesson was meant.
TEST(Desktop, ExecOpensWhatIsGivenOrTheDemo) {
  const Folder folder;
  const std::string odd = folder.file("room 7 \"blue\" $HOME.foldwright.json", "{\"lesson\": 1, \"title\": 5}");
  const std::string no_display = "env -u DISPLAY -u WAYLAND_DISPLAY '" FOLDWRIGHT_PROGRAM "' ";
  const auto told = [&](const std::string& arguments) {
    EXPECT_NE(std::system((no_display + arguments + " 2>" + folder.path("error")).c_str()), 0);
    return contents(folder.path("error"));
  };
  EXPECT_THAT(told("show '" + odd + "'"), HasSubstr("$HOME.foldwright.json:1:"));
  EXPECT_THAT(told("show"), HasSubstr("No window can be opened: there is no display"));
  EXPECT_THAT(told("show ''"), Not(HasSubstr("No window")));
}

TEST(Desktop, VersionsKeepTheEndingThatOpensThem) {
  const Folder folder;
  const Outcome done = run_program("practice --count 2 --versions 2 -o " + folder.path("week.foldwright.json"));
  EXPECT_EQ(done.status, 0) << done.error;
  EXPECT_THAT(done.out, HasSubstr("week-1.foldwright.json: 2 problems"));
  EXPECT_EQ(run_program("check " + folder.path("week-2.foldwright.json")).status, 0);
}

}  // namespace
}  // namespace fw::cli::package_test
