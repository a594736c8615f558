#include "viewer/commands/command_line.h"

#include <sys/wait.h>
#include <unistd.h>
#include <vtkVersion.h>

#include <QtGlobal>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include "tests/support/json_schema.h"
#include "tests/support/own_folder.h"

namespace fs = std::filesystem;
using scalpmark::tests::slurp;
using Folder = scalpmark::tests::OwnFolder;

namespace {

struct Ran {
  int exit = -1;
  std::string out, err;
};

/// Runs the program as a shell would, without a display.
Ran run(const Folder& folder, const std::string& arguments) {
  const std::string out = folder.file("stdout"), err = folder.file("stderr");
  const int status = std::system(("env -u DISPLAY XDG_CACHE_HOME='" SCALPMARK_BINARY_DIR
                                  "/test-cache' '" SCALPMARK_PROGRAM "' " +
                                  arguments + " >'" + out + "' 2>'" + err + "'")
                                     .c_str());
  return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, slurp(out), slurp(err)};
}

void check_one_sentence(const std::string& text) {
  INFO(text);
  REQUIRE_FALSE(text.empty());
  CHECK(std::count(text.begin(), text.end(), '\n') == 1);
  CHECK(text.rfind("scalpmark: ", 0) == 0);
}

/// Lines joined to one.
std::string unbroken(std::string text) {
  std::replace(text.begin(), text.end(), '\n', ' ');
  return text;
}

const std::string bench = SCALPMARK_SOURCE_DIR "/models/demo/bench-head.json";

}  // namespace

TEST_CASE("help and version go to the standard output and succeed") {
  const Folder folder;
  for (const char* arguments :
       {"--help", "solve --help", "picture --help", "head --help", "contact --help", "field --help"}) {
    const Ran r = run(folder, arguments);
    CHECK(r.exit == 0);
    CHECK(r.err.empty());
    const bool tells = r.out.find("--out") != std::string::npos || r.out.find("picture") != std::string::npos;
    CHECK(tells);
  }
}

TEST_CASE("the version names what the program is built on, as the libraries themselves say it") {
  const Folder folder;
  const std::string out = run(folder, "--version").out;
  INFO(out);
  CHECK(out.rfind("scalpmark ", 0) == 0);
  CHECK(out.find("Qt " + std::string(qVersion()) + ",") != std::string::npos);
  CHECK(out.find("VTK " + std::string(vtkVersion::GetVTKVersion()) + ",") != std::string::npos);
  for (const char* library :
       {"Eigen 3.", "Assimp ", "OpenMesh ", "Boost ", "JSON for Modern C++ ", "zlib ", "CLI11 "})
    CHECK(out.find(library) != std::string::npos);
}

TEST_CASE("help groups the commands by what people come for, each of them once") {
  const Folder folder;
  const std::string out = run(folder, "--help").out;
  INFO(out);
  std::size_t before = 0;
  for (const char* heading : {"Before the first visit", "At the chair", "From visit to visit", "For a class",
                              "How far to trust it", "A head of one's own", "To hand on"}) {
    const std::size_t at = out.find(heading);
    REQUIRE(at != std::string::npos);
    CHECK(at > before);
    before = at;
  }
  CHECK(out.find("Subcommands") == std::string::npos);  // of no trade
  for (const char* command :
       {"solve", "picture", "sheet", "strips", "check", "answers", "log", "course", "exercise", "score",
        "tolerance", "contact", "field", "head", "page", "export"}) {
    const std::string line = "\n  " + std::string(command) + " ";
    CHECK(out.find(line) != std::string::npos);
    CHECK(out.find(line) == out.rfind(line));
  }
}

TEST_CASE("a command line that cannot be understood: exit 2, one sentence, no file") {
  const Folder folder;
  const std::string out = folder.file("out.png");
  for (const std::string& arguments : {std::string("paint"),
                                       std::string("solve"),
                                       "solve '" + bench + "'",
                                       "picture --out '" + out + "'",
                                       "picture '" + bench + "' --out '" + out + "' --from below",
                                       "picture '" + bench + "' --out '" + out + "' --size huge",
                                       "picture '" + bench + "' --out '" + out + "' --size 10x10",
                                       "picture '" + bench + "' --out '" + out + "' --size 99999x99999",
                                       "picture '" + bench + "' --out '" + out + "' --show skin,nose",
                                       "picture '" + bench + "' --out '" + out + "' --coil-on 2,0",
                                       "picture '" + bench + "' --out '" + out + "' --colour red",
                                       "contact '" + bench + "' --out '" + out + "' --on nose",
                                       "contact '" + bench + "' --out '" + out + "' --on 0,2",
                                       "contact '" + bench + "' --out '" + out + "' --roll 45",
                                       "field '" + bench + "' --out '" + out + "' --on nose",
                                       "field '" + bench + "' --out '" + out + "' --at 1,2",
                                       "field '" + bench + "' --out '" + out + "' --at 1,2,nan",
                                       "field '" + bench + "' --out '" + out + "' --at 1,2,3mm",
                                       "contact '" + bench + "' --out '" + out + "' --pitch down",
                                       "tolerance '" + bench + "' --out '" + out + "' --seed -1",
                                       "head scan.ply --out '" + out + "' --unit inch",
                                       "head a.nii --out '" + out + "' --unit mm"}) {
    INFO(arguments);
    const Ran r = run(folder, arguments);
    CHECK(r.exit == 2);
    CHECK(r.out.empty());
    check_one_sentence(r.err);
    CHECK_FALSE(fs::exists(out));
  }
}

TEST_CASE("a word with more after it is called an unknown command, and a file with more after it is not") {
  const Folder folder;
  const Ran misspelt = run(folder, "fild '" + bench + "'");
  CHECK(misspelt.exit == 2);
  CHECK(
      misspelt.err ==
      "scalpmark: \"fild\" is an unknown command (there is field); write scalpmark --help for those there are.\n");
  CHECK(run(folder, "paint it").err ==
        "scalpmark: \"paint\" is an unknown command; write scalpmark --help for those there are.\n");
  CHECK(run(folder, "fild '" + bench + "' --out -").err == misspelt.err);
  const Ran two_files = run(folder, "'" + bench + "' more.json");
  CHECK(two_files.exit == 2);
  CHECK(two_files.err.find("unknown command") == std::string::npos);
  CHECK(two_files.err.find("more.json") != std::string::npos);
  const Ran alone = run(folder, "fild");
  CHECK(alone.exit == 2);
  CHECK(alone.err.find("\"fild\" is neither a command nor a file") != std::string::npos);
}

TEST_CASE("an option that is none of the names says which it takes, and takes no numbers for them") {
  const Folder folder;
  const std::string picture = "picture '" + bench + "' --out '" + folder.file("a.png") + "' ";
  CHECK(run(folder, picture + "--from below")
            .err.rfind("scalpmark: --from is \"below\"; choose one of left, right, ", 0) == 0);
  CHECK(run(folder, picture + "--show skin,nose")
            .err.rfind("scalpmark: --show has \"nose\"; choose from skin, ", 0) == 0);
  for (const std::string& arguments :
       {picture + "--from 2", picture + "--from ''", picture + "--show 1",
        std::string("head scan.ply --guess --unit 0"),
        "sheet '" + bench + "' --out '" + folder.file("a.pdf") + "' --paper 1"}) {
    INFO(arguments);
    const Ran r = run(folder, arguments);
    CHECK(r.exit == 2);
    CHECK(r.err.find("; choose ") != std::string::npos);
  }
}

TEST_CASE("anything else that fails: exit 1, one sentence, the old file untouched") {
  const Folder folder;
  const std::string out = folder.file("old");
  std::ofstream(out) << "old";
  std::ofstream(folder.file("broken.json")) << "{ \"format\": ";
  std::ofstream(folder.file("scan.ply")) << "ply\nformat ascii 1.0\nend_header\n";
  for (const std::string& arguments : {"solve '" + folder.file("missing.json") + "' --out '" + out + "'",
                                       "solve '" + folder.file("broken.json") + "' --out '" + out + "'",
                                       "solve '" + folder.path.string() + "' --out '" + out + "'",
                                       "picture '" + folder.file("broken.json") + "' --out '" + out + "'",
                                       "picture '" + folder.file("missing.json") + "' --out '" + out + "'",
                                       "head '" + folder.file("scan.ply") + "' --out '" + out + "'",
                                       "head '" + folder.file("missing.nii.gz") + "' --out '" + out + "'"}) {
    INFO(arguments);
    const Ran r = run(folder, arguments);
    CHECK(r.exit == 1);
    CHECK(r.out.empty());
    check_one_sentence(r.err);
    CHECK(slurp(out) == "old");
  }
}

TEST_CASE("every kind of bad case: exit 1, one sentence, no plan, the old plan untouched") {
  const Folder folder;
  const std::string out = folder.file("old.json"), fresh = folder.file("fresh.json"),
                    bad = folder.file("bad.json");
  std::ofstream(out) << "old";
  const std::string start = R"({"format": "scalpmark-case", "version": 1, "head": {"kind": "generic"})";
  const std::vector<std::string> texts{
      "",
      "{",
      "[]",
      "not JSON at all",
      R"({"format": "scalpmark-plan", "version": 1, "head": {"kind": "generic"}})",
      R"({"format": "scalpmark-case", "version": 3, "head": {"kind": "generic"}})",
      R"({"format": "scalpmark-case", "version": 1})",
      start + R"(, "colour": "red"})",
      start + R"(, "search": {"pitch_mm": "ten"}})",
      start + R"(, "search": {"pitch_mm": 1e999}})",
      start + R"(, "search": {"pitch_mm": NaN}})",
      start + R"(, "search": {"pitch_mm": 2000}})",
      start + R"(, "search": {"pitch": 10}})",
      start + R"(, "side": "middle"})",
      start + R"(, "coil": {"model": "no-such-coil"}})",
      start + R"(, "hotspot": {"row": 0.5}})",
      start + R"(, "treatment": {"rule": "landmark", "label": "Q7"}})",
      start + R"(, "tape_mm": {"nasion_inion": 100}})",
      start + R"(, "tape_mm": {"nasion_inion": 440, "tragus_tragus": 290}})",
      start + R"(, "side": "left", "side": "right"})",
      R"({"format": "scalpmark-case", "version": 1, "head": {"kind": "mesh", "file": "missing.ply", "nasion": [0, 95, 0],)"
      R"( "inion": [0, -95, 0], "left_tragus": [-75, 0, 0], "right_tragus": [75, 0, 0]}})",
      R"({"format": "scalpmark-case", "version": 1, "head": {"kind": "mri", "file": "x.nii", "nasion": [0, 95]}})",
      std::string(400000, '['),
      start + ", \"label\": " + std::string(30, '{') + std::string(30, '}') + "}",
  };
  for (const auto& text : texts) {
    INFO(text.substr(0, 120));
    std::ofstream(bad, std::ios::trunc) << text;
    const Ran r = run(folder, "solve '" + bad + "' --out '" + out + "'");
    CHECK(r.exit == 1);
    CHECK(r.out.empty());
    check_one_sentence(r.err);
    CHECK(slurp(out) == "old");
    CHECK(run(folder, "solve '" + bad + "' --out '" + fresh + "'").exit == 1);
    CHECK_FALSE(fs::exists(fresh));
  }
}

TEST_CASE("solve writes the same plan to a file and to the standard output") {
  const Folder folder;
  const Ran to_file = run(folder, "solve '" + bench + "' --out '" + folder.file("plan.json") + "'");
  CHECK(to_file.exit == 0);
  CHECK(to_file.out.empty());
  const Ran to_out = run(folder, "solve '" + bench + "' --out -");
  CHECK(to_out.exit == 0);
  CHECK(to_out.out == slurp(folder.file("plan.json")));
  CHECK(to_out.out.find("\"scalpmark-plan\"") != std::string::npos);
}

TEST_CASE("picture writes a PNG of the size asked for, without a display") {
  const Folder folder;
  const std::string out = folder.file("a.png");
  REQUIRE(run(folder, "picture '" + bench + "' --out '" + out + "' --from above --size 800x600").exit == 0);
  const std::string png = slurp(out);
  // PNG (ISO/IEC 15948): eight bytes of signature, then IHDR with width and height, most significant byte
  // first.
  REQUIRE(png.size() > 24);
  CHECK(png.substr(0, 8) == "\x89PNG\r\n\x1a\n");
  const auto number = [&](size_t at) {
    int n = 0;
    for (size_t i = at; i < at + 4; ++i) n = n * 256 + static_cast<unsigned char>(png[i]);
    return n;
  };
  CHECK(number(16) == 800);
  CHECK(number(20) == 600);
}

TEST_CASE("a picture that cannot be written leaves nothing behind") {
  const Folder folder;
  const Ran r = run(
      folder, "picture '" + bench + "' --size 640x480 --out '" + folder.file("no/such/folder/a.png") + "'");
  CHECK(r.exit == 1);
  CHECK_FALSE(fs::exists(folder.path / "no"));
}

TEST_CASE("a plan says what lies under the coil, always as the template's") {
  const Folder folder;
  const Ran r = run(folder, "solve '" + bench + "' --out '" + folder.file("plan.json") + "'");
  REQUIRE(r.exit == 0);
  const std::string plan = slurp(folder.file("plan.json"));
  // Start, nine spots, hotspot, treatment site.
  size_t found = 0, noted = 0;
  for (size_t at = 0; (at = plan.find("\"cortex\"", at)) != std::string::npos; ++at) ++found;
  for (size_t at = 0;
       (at = plan.find("on the template; a person's own brain differs", at)) != std::string::npos; ++at)
    ++noted;
  CHECK(found == 12);
  CHECK(noted == 12);
}

TEST_CASE("a guess of the four points is printed with the words that it must be confirmed") {
  const Folder folder;
  CHECK(run(folder, "head /usr/share/mricron/templates/ch2.nii.gz").exit == 2);
  const Ran r = run(folder, "head /usr/share/mricron/templates/ch2.nii.gz --guess");
  REQUIRE(r.exit == 0);
  CHECK(r.out.find("not placed by hand") != std::string::npos);
  CHECK(r.out.find("confirm or move it before it is used") != std::string::npos);
  for (const char* point : {"\"nasion\": [", "\"inion\": [", "\"left_tragus\": [", "\"right_tragus\": ["})
    CHECK(r.out.find(point) != std::string::npos);
}

TEST_CASE(
    "contact says how the coil rests, writes what it says, and says where the pulse goes when held askew") {
  const Folder folder;
  const std::string out = folder.file("contact.json");
  const Ran flat = run(folder, "contact '" + bench + "' --out '" + out + "'");
  CHECK(flat.exit == 0);
  CHECK(flat.out.find("on the treatment site:") != std::string::npos);
  CHECK(flat.out.find("rests on its centre") != std::string::npos);
  CHECK(flat.out.find("neither an ear nor the brow") != std::string::npos);
  CHECK(flat.out.find("under the left wing") != std::string::npos);
  CHECK(unbroken(flat.out).find("Training and illustration only") != std::string::npos);
  std::istringstream lines(flat.out);
  for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 80);
  const std::string written = slurp(out);
  CHECK(scalpmark::tests::JsonSchema("contact.schema.json").objection(written).empty());
  CHECK(written == run(folder, "contact '" + bench + "' --out -").out);

  const Ran askew = run(folder, "contact '" + bench + "' --on 0,1 --roll 10 --pitch -5 --cap 4 --out -");
  CHECK(askew.exit == 0);
  CHECK(scalpmark::tests::JsonSchema("contact.schema.json").objection(askew.out).empty());
  CHECK(askew.out.find("tilted by 10 degrees, its right side down, and tilted by 5 degrees, its front edge "
                       "down") != std::string::npos);
  CHECK(askew.out.find("\"on\": \"0,1\"") != std::string::npos);

  const std::string file = folder.file("angled.json");
  std::string angled = slurp(bench);
  angled.replace(angled.find("figure-8-70"), 11, "angled-8-150");
  std::ofstream(file) << angled;
  const Ran wings = run(folder, "contact '" + file + "' --on start");
  CHECK(wings.exit == 0);
  CHECK(wings.out.find("on the start:") != std::string::npos);
  CHECK(unbroken(wings.out).find("clear of the skin") != std::string::npos);
}

TEST_CASE("field says where the field goes in a round model head, and at the places asked for") {
  const Folder folder;
  const std::string out = folder.file("field.json");
  const std::string asked = "field '" + bench + "' --no-brain --on 0,1 --at -30,20,60 --at 0,0,10";
  const Ran said = run(folder, asked + " --out '" + out + "'");
  CHECK(said.exit == 0);
  CHECK(said.out.find("on the spot") != std::string::npos);
  const std::string text = unbroken(said.out);
  CHECK(text.find("In a round model head (radius ") != std::string::npos);
  CHECK(text.find("Not this patient's field") != std::string::npos);
  CHECK(text.find("Training and illustration only") != std::string::npos);
  std::istringstream lines(said.out);
  for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 80);
  const std::string written = slurp(out);
  CHECK(scalpmark::tests::JsonSchema("field.schema.json").objection(written).empty());
  CHECK(written == run(folder, asked + " --out -").out);
  CHECK(written.find("\"on\": \"0,1\"") != std::string::npos);
  CHECK(written.find("\"looked_at_on\": \"sphere\"") != std::string::npos);
  const Ran outside = run(folder, "field '" + bench + "' --no-brain --at 0,0,900");
  CHECK(outside.exit == 1);
  CHECK(outside.err.find("give one inside the head") != std::string::npos);
}

TEST_CASE("check says where today's marks put the pulse, and asks where tapes fit several places") {
  const Folder folder;
  const std::string out = folder.file("check.json");
  // The bench head's own distances of its treatment site and edge mark, as its sheet says them.
  const Ran good = run(folder, "check '" + bench +
                                   "' --site nasion=113,left_tragus=120.7,right_tragus=225.6 "
                                   "--edge nasion=64.5,left_tragus=159.6,right_tragus=161.3 --out '" +
                                   out + "'");
  CHECK(good.exit == 0);
  CHECK(good.out.find("Site mark: The mark is within 0.") != std::string::npos);
  CHECK(unbroken(good.out).find("Training and illustration only") != std::string::npos);
  std::istringstream lines(good.out);
  for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 80);
  const std::string written = slurp(out);
  CHECK(scalpmark::tests::JsonSchema("check.schema.json").objection(written).empty());
  CHECK(written.find("\"verdict\": \"agrees\"") != std::string::npos);

  // Vertex and both tragi lie nearly in one plane: in front of it and behind.
  const std::string two = "check '" + bench + "' --site vertex=85.5,left_tragus=120.7,right_tragus=225.6 " +
                          "--edge nasion=64.5,left_tragus=159.6,right_tragus=161.3";
  const Ran unsure = run(folder, two + " --out -");
  CHECK(unsure.exit == 0);
  CHECK(scalpmark::tests::JsonSchema("check.schema.json").objection(unsure.out).empty());
  CHECK(unsure.out.find("\"verdict\": \"unsure\"") != std::string::npos);
  CHECK(unsure.out.find("\"pulse\": null") != std::string::npos);
  CHECK(unbroken(run(folder, two).out).find("These tapes fit 2 places") != std::string::npos);
  const Ran nearest = run(folder, two + " --nearest --out -");
  CHECK(nearest.out.find("\"verdict\": \"agrees\"") != std::string::npos);
  CHECK(nearest.out.find("\"nearest_to_plan\": true") != std::string::npos);
  CHECK(unbroken(run(folder, two + " --nearest").out).find("as was asked for") != std::string::npos);
}

TEST_CASE("check says how the cap sits by its brim, without the marks or with them") {
  const Folder folder;
  const Ran cap = run(folder, "check '" + bench + "' --brim nasion=14,left_tragus=37,inion=25,arrow=8");
  CHECK(cap.exit == 0);
  // A brim 6 mm too low in front and 5 too high behind (20 and 20 on this head) has slid forward by that.
  CHECK_THAT(unbroken(cap.out), Catch::Contains("Slide the cap 0.5 cm back") &&
                                    Catch::Contains("degrees to the patient's left") &&
                                    Catch::Contains("Training and illustration only."));
  const Ran json = run(folder, "check '" + bench + "' --brim nasion=14,inion=25 --out -");
  CHECK(json.exit == 0);
  CHECK(scalpmark::tests::JsonSchema("check.schema.json").objection(json.out).empty());
  CHECK_THAT(json.out, Catch::Contains("\"turn_deg\": null"));
  const Ran both =
      run(folder, "check '" + bench +
                      "' --brim nasion=20,inion=19 --site vertex=83,left_tragus=127,right_tragus=228");
  CHECK(both.exit == 0);
  CHECK_THAT(unbroken(both.out),
             Catch::Contains("The cap sits as it should") && Catch::Contains("Site mark"));
  const Ran bad = run(folder, "check '" + bench + "' --brim nasion=20");
  CHECK(bad.exit == 2);
  check_one_sentence(bad.err);
  const Ran none = run(folder, "check '" + bench + "' --brim nasion=60,inion=60");
  CHECK(none.exit == 1);
  check_one_sentence(none.err);
}

TEST_CASE("check's tapes that cannot be understood are called by name; tapes of no mark are refused") {
  const Folder folder;
  for (const char* marks :
       {"", "--site vertex=83", "--site vertex=83,ear=20", "--site vertex=83,vertex=84",
        "--site vertex=83,nasion=long", "--site vertex=83,nasion=-3", "--site vertex=83,nasion=nan",
        "--edge vertex,nasion=70", "--site vertex=83,nasion=113 --pulse-limit 0"}) {
    INFO(marks);
    const Ran r = run(folder, "check '" + bench + "' " + marks);
    CHECK(r.exit == 2);
    CHECK(r.out.empty());
    check_one_sentence(r.err);
  }
  const Ran r = run(folder, "check '" + bench + "' --site vertex=40,nasion=40");
  CHECK(r.exit == 1);
  CHECK(r.err.find("do not meet on the skin") != std::string::npos);
  check_one_sentence(r.err);
}

TEST_CASE("a picture of the gaps is drawn on the command line") {
  const Folder folder;
  const std::string out = folder.file("gaps.png");
  const Ran r =
      run(folder, "picture '" + bench + "' --show skin,coil,gaps,labels --size 640x480 --out '" + out + "'");
  CHECK(r.exit == 0);
  CHECK(slurp(out).rfind("\x89PNG", 0) == 0);
}
