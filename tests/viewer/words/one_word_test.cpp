// One word for one thing in all that people read: the words that were not chosen (DEVELOPERS, "Words") stand
// in no text of the program.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>

namespace fs = std::filesystem;

namespace {

struct Text {
  std::string text, where;
};

/// Literals that stand side by side are one; what they follow says whether people read them.
void add_texts(const fs::path& file, std::vector<Text>& all) {
  std::ifstream in(file);
  std::stringstream whole;
  whole << in.rdbuf();
  const std::string code = whole.str();
  static const std::regex run(
      R"re(((?:\b(?:tr|of|verbatim|NOOP|wrapped_text)\(\s*(?:"[A-Za-z:]*",\s*)?)?)("(?:[^"\\\n]|\\.)*"(?:\s*"(?:[^"\\\n]|\\.)*")*))re");
  for (auto at = std::sregex_iterator(code.begin(), code.end(), run); at != std::sregex_iterator(); ++at) {
    std::string text;
    static const std::regex piece(R"re("((?:[^"\\\n]|\\.)*)")re");
    const std::string literals = (*at)[2];
    for (auto p = std::sregex_iterator(literals.begin(), literals.end(), piece); p != std::sregex_iterator();
         ++p)
      text += (*p)[1];
    const bool is_read = (*at)[1].length() > 0 || text.find(' ') != std::string::npos;
    if (is_read) all.push_back({text, file.filename().string()});
  }
}

std::vector<Text> all_texts() {
  std::vector<Text> all;
  for (const char* folder : {"geometry", "models", "viewer"})
    for (const auto& entry : fs::recursive_directory_iterator(fs::path(SCALPMARK_SOURCE_DIR) / folder))
      if (entry.path().extension() == ".cpp" || entry.path().extension() == ".h")
        add_texts(entry.path(), all);
  return all;
}

struct NotChosen {
  const char* word;
  const char* chosen;
};
/// Patterns of words that mean a thing which has another name here.
const std::vector<NotChosen>& not_chosen() {
  static const std::vector<NotChosen> all{
      {R"(\bnodes?\b)", "spot"},
      {R"(\bprotocols?\b)", "starting values"},
      {R"(\bGood within\b)", "allowed distance, allowed angle"},
      {R"(\bedge at \d|\bedge at %)", "centre to front edge"},
      {R"(\bunder the edge\b)", "edge ... above this mark"},
      {R"(\b[Ss]quare on\b)", "straight down on"},
      {R"(\bstandard deviations?\b)", "typical error"},
      {R"(\b[Nn]othing (spoiled|goes wrong)\b)", "nothing wrong"},
      {R"(\b(as|is|was|be|than|the) planned\b|\bas meant\b|\bare meant\b)", "wanted"},
      {R"(\bedge to skin\b|\bstands? (%1 )?off the skin\b)", "gap"},
      {R"(^[Bb]etween (spots|nodes)$)", "grid step"},
      {R"(\b([Rr]olls?|[Rr]olled|[Pp]itch(es|ed)?|[Aa]skew|[Rr]ocks?)\b)",
       "tilt (of the coil), grid step (of the grid)"},
      {R"(\b[Ll]ift for\b)", "cap and hair"},
      {R"(\b[Ff]iducials?\b)", "the four points"},
      {R"(\bgrid row %1\b)", "the steps of a spot"},
      {R"(\b[Pp]lacements? (by hand|tried|were tried)\b|\bof (the |100 )placements\b|\btrying placements\b)",
       "trial"},
      {R"(\bclinician watches\b)", "technician"},
      {R"(\bringed\b|\brings it\b)", "marked"},
      {R"(\bhalf way %1 to\b)", "half way between"},
      {R"(\bstraight below\b)", "under"},
      {"\\u2713 On|\\u2717 ", "words and a bar, solid, dashed or dotted"},
  };
  return all;
}

/// Names of things in files and on the command line that a text may name as they stand there.
bool is_name_in_files(const std::string& text) {
  static const std::regex names(R"(search\.pitch_mm|roll_deg|pitch_deg)");
  return std::regex_search(text, names);
}

}  // namespace

TEST_CASE("no text has another word for a thing than the one that was chosen") {
  const std::vector<Text> texts = all_texts();
  REQUIRE(texts.size() > 1200);
  for (const NotChosen& each : not_chosen()) {
    const std::regex word(each.word);
    for (const Text& text : texts) {
      if (is_name_in_files(text.text) || !std::regex_search(text.text, word)) continue;
      INFO(text.where << ": \"" << text.text << "\" instead of: " << each.chosen);
      CHECK(false);
    }
  }
}

TEST_CASE("the words that were not chosen are found where they stand") {
  for (const std::string said : {"Lay the coil on a node", "Half of the placements lie within %1",
                                 "the coil lies at %1 to the midline, as meant", "half way %1 to %2",
                                 "23.9 mm under the edge", "The coil's roll and pitch"}) {
    INFO(said);
    CHECK(std::any_of(not_chosen().begin(), not_chosen().end(),
                      [&](const NotChosen& each) { return std::regex_search(said, std::regex(each.word)); }));
  }
}
