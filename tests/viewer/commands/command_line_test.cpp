#include "viewer/commands/command_line.h"

#include <sys/wait.h>
#include <unistd.h>
#include <vtkVersion.h>

#include <QtGlobal>
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include "tests/support/command_run.h"
#include "tests/support/json_schema.h"
#include "tests/support/own_folder.h"

namespace fs = std::filesystem;
using scalpmark::tests::bench_case;
using scalpmark::tests::check_one_sentence;
using scalpmark::tests::Ran;
using scalpmark::tests::run;
using scalpmark::tests::slurp;
using Folder = scalpmark::tests::OwnFolder;

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
                                       "solve '" + bench_case + "'",
                                       "picture --out '" + out + "'",
                                       "picture '" + bench_case + "' --out '" + out + "' --from below",
                                       "picture '" + bench_case + "' --out '" + out + "' --size huge",
                                       "picture '" + bench_case + "' --out '" + out + "' --size 10x10",
                                       "picture '" + bench_case + "' --out '" + out + "' --size 99999x99999",
                                       "picture '" + bench_case + "' --out '" + out + "' --show skin,nose",
                                       "picture '" + bench_case + "' --out '" + out + "' --coil-on 2,0",
                                       "picture '" + bench_case + "' --out '" + out + "' --colour red",
                                       "contact '" + bench_case + "' --out '" + out + "' --on nose",
                                       "contact '" + bench_case + "' --out '" + out + "' --on 0,2",
                                       "contact '" + bench_case + "' --out '" + out + "' --roll 45",
                                       "field '" + bench_case + "' --out '" + out + "' --on nose",
                                       "field '" + bench_case + "' --out '" + out + "' --at 1,2",
                                       "field '" + bench_case + "' --out '" + out + "' --at 1,2,nan",
                                       "field '" + bench_case + "' --out '" + out + "' --at 1,2,3mm",
                                       "contact '" + bench_case + "' --out '" + out + "' --pitch down",
                                       "tolerance '" + bench_case + "' --out '" + out + "' --seed -1",
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
  const Ran misspelt = run(folder, "fild '" + bench_case + "'");
  CHECK(misspelt.exit == 2);
  CHECK(
      misspelt.err ==
      "scalpmark: \"fild\" is an unknown command (there is field); write scalpmark --help for those there are.\n");
  CHECK(run(folder, "paint it").err ==
        "scalpmark: \"paint\" is an unknown command; write scalpmark --help for those there are.\n");
  CHECK(run(folder, "fild '" + bench_case + "' --out -").err == misspelt.err);
  const Ran two_files = run(folder, "'" + bench_case + "' more.json");
  CHECK(two_files.exit == 2);
  CHECK(two_files.err.find("unknown command") == std::string::npos);
  CHECK(two_files.err.find("more.json") != std::string::npos);
  const Ran alone = run(folder, "fild");
  CHECK(alone.exit == 2);
  CHECK(alone.err.find("\"fild\" is neither a command nor a file") != std::string::npos);
}

TEST_CASE("an option that is none of the names says which it takes, and takes no numbers for them") {
  const Folder folder;
  const std::string picture = "picture '" + bench_case + "' --out '" + folder.file("a.png") + "' ";
  CHECK(run(folder, picture + "--from below")
            .err.rfind("scalpmark: --from is \"below\"; choose one of left, right, ", 0) == 0);
  CHECK(run(folder, picture + "--show skin,nose")
            .err.rfind("scalpmark: --show has \"nose\"; choose from skin, ", 0) == 0);
  for (const std::string& arguments :
       {picture + "--from 2", picture + "--from ''", picture + "--show 1",
        std::string("head scan.ply --guess --unit 0"),
        "sheet '" + bench_case + "' --out '" + folder.file("a.pdf") + "' --paper 1"}) {
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
