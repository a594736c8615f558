// What commands write, and say on the terminal.
#include <unistd.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
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
using scalpmark::tests::unbroken;
using Folder = scalpmark::tests::OwnFolder;

TEST_CASE("solve writes the same plan to a file and to the standard output") {
  const Folder folder;
  const Ran to_file = run(folder, "solve '" + bench_case + "' --out '" + folder.file("plan.json") + "'");
  CHECK(to_file.exit == 0);
  CHECK(to_file.out.empty());
  const Ran to_out = run(folder, "solve '" + bench_case + "' --out -");
  CHECK(to_out.exit == 0);
  CHECK(to_out.out == slurp(folder.file("plan.json")));
  CHECK(to_out.out.find("\"scalpmark-plan\"") != std::string::npos);
}

TEST_CASE("picture writes a PNG of the size asked for, without a display") {
  const Folder folder;
  const std::string out = folder.file("a.png");
  REQUIRE(run(folder, "picture '" + bench_case + "' --out '" + out + "' --from above --size 800x600").exit ==
          0);
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
  const Ran r = run(folder, "picture '" + bench_case + "' --size 640x480 --out '" +
                                folder.file("no/such/folder/a.png") + "'");
  CHECK(r.exit == 1);
  CHECK_FALSE(fs::exists(folder.path / "no"));
}

TEST_CASE("a plan says what lies under the coil, always as the template's") {
  const Folder folder;
  const Ran r = run(folder, "solve '" + bench_case + "' --out '" + folder.file("plan.json") + "'");
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
  const Ran flat = run(folder, "contact '" + bench_case + "' --out '" + out + "'");
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
  CHECK(written == run(folder, "contact '" + bench_case + "' --out -").out);

  const Ran askew = run(folder, "contact '" + bench_case + "' --on 0,1 --roll 10 --pitch -5 --cap 4 --out -");
  CHECK(askew.exit == 0);
  CHECK(scalpmark::tests::JsonSchema("contact.schema.json").objection(askew.out).empty());
  CHECK(askew.out.find("tilted by 10 degrees, its right side down, and tilted by 5 degrees, its front edge "
                       "down") != std::string::npos);
  CHECK(askew.out.find("\"on\": \"0,1\"") != std::string::npos);

  const std::string file = folder.file("angled.json");
  std::string angled = slurp(bench_case);
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
  const std::string asked = "field '" + bench_case + "' --no-brain --on 0,1 --at -30,20,60 --at 0,0,10";
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
  const Ran outside = run(folder, "field '" + bench_case + "' --no-brain --at 0,0,900");
  CHECK(outside.exit == 1);
  CHECK(outside.err.find("give one inside the head") != std::string::npos);
}

TEST_CASE("check says where today's marks put the pulse, and asks where tapes fit several places") {
  const Folder folder;
  const std::string out = folder.file("check.json");
  // The bench head's own distances of its treatment site and edge mark, as its sheet says them.
  const Ran good = run(folder, "check '" + bench_case +
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
  const std::string two = "check '" + bench_case +
                          "' --site vertex=85.5,left_tragus=120.7,right_tragus=225.6 " +
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
  const Ran cap = run(folder, "check '" + bench_case + "' --brim nasion=14,left_tragus=37,inion=25,arrow=8");
  CHECK(cap.exit == 0);
  // A brim 6 mm too low in front and 5 too high behind (20 and 20 on this head) has slid forward by that.
  CHECK_THAT(unbroken(cap.out), Catch::Contains("Slide the cap 0.5 cm back") &&
                                    Catch::Contains("degrees to the patient's left") &&
                                    Catch::Contains("Training and illustration only."));
  const Ran json = run(folder, "check '" + bench_case + "' --brim nasion=14,inion=25 --out -");
  CHECK(json.exit == 0);
  CHECK(scalpmark::tests::JsonSchema("check.schema.json").objection(json.out).empty());
  CHECK_THAT(json.out, Catch::Contains("\"turn_deg\": null"));
  const Ran both =
      run(folder, "check '" + bench_case +
                      "' --brim nasion=20,inion=19 --site vertex=83,left_tragus=127,right_tragus=228");
  CHECK(both.exit == 0);
  CHECK_THAT(unbroken(both.out),
             Catch::Contains("The cap sits as it should") && Catch::Contains("Site mark"));
  const Ran bad = run(folder, "check '" + bench_case + "' --brim nasion=20");
  CHECK(bad.exit == 2);
  check_one_sentence(bad.err);
  const Ran none = run(folder, "check '" + bench_case + "' --brim nasion=60,inion=60");
  CHECK(none.exit == 1);
  check_one_sentence(none.err);
}

TEST_CASE("check's tapes that cannot be understood are called by name, tapes of no mark are refused") {
  const Folder folder;
  for (const char* marks :
       {"", "--site vertex=83", "--site vertex=83,ear=20", "--site vertex=83,vertex=84",
        "--site vertex=83,nasion=long", "--site vertex=83,nasion=-3", "--site vertex=83,nasion=nan",
        "--edge vertex,nasion=70", "--site vertex=83,nasion=113 --pulse-limit 0"}) {
    INFO(marks);
    const Ran r = run(folder, "check '" + bench_case + "' " + marks);
    CHECK(r.exit == 2);
    CHECK(r.out.empty());
    check_one_sentence(r.err);
  }
  const Ran r = run(folder, "check '" + bench_case + "' --site vertex=40,nasion=40");
  CHECK(r.exit == 1);
  CHECK(r.err.find("do not meet on the skin") != std::string::npos);
  check_one_sentence(r.err);
}

TEST_CASE("a picture of the gaps is drawn on the command line") {
  const Folder folder;
  const std::string out = folder.file("gaps.png");
  const Ran r = run(
      folder, "picture '" + bench_case + "' --show skin,coil,gaps,labels --size 640x480 --out '" + out + "'");
  CHECK(r.exit == 0);
  CHECK(slurp(out).rfind("\x89PNG", 0) == 0);
}
