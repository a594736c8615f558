// What a scene may know, read from its files.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <string>

// So that something else than VTK can draw it.
TEST_CASE("what makes a scene knows neither VTK nor the drawing, and its headers no Qt") {
  namespace fs = std::filesystem;
  const fs::path root = SCALPMARK_SOURCE_DIR;
  const std::regex include("^\\s*#\\s*include\\s*[<\"]([^>\"]+)[>\"]");
  std::vector<fs::path> wanted;
  std::set<fs::path> read;
  for (const char* const room : {"viewer/stage/scene", "viewer/stage/things"})
    for (const auto& entry : fs::directory_iterator(root / room)) wanted.push_back(entry.path());
  REQUIRE(wanted.size() > 20);
  while (!wanted.empty()) {
    const fs::path file = wanted.back();
    wanted.pop_back();
    if (!read.insert(file).second) continue;
    std::ifstream in(file);
    REQUIRE(in);
    const bool of_the_scene = file.string().find("/stage/") != std::string::npos;
    for (std::string line; std::getline(in, line);) {
      std::smatch found;
      if (!std::regex_search(line, found, include)) continue;
      const std::string name = found[1];
      INFO(file.string() << " includes " << name);
      CHECK(name.rfind("vtk", 0) != 0);
      CHECK(name.find("QVTK") == std::string::npos);
      CHECK(name.find("stage/drawing/") == std::string::npos);
      if (of_the_scene && file.extension() == ".h") {
        CHECK_FALSE((name.size() > 1 && name[0] == 'Q' && std::isupper(static_cast<unsigned char>(name[1]))));
        CHECK(name.find("viewer/words/") == std::string::npos);
      }
      if (name.rfind("viewer/", 0) == 0 || name.rfind("geometry/", 0) == 0 || name.rfind("models/", 0) == 0)
        wanted.push_back(root / name);
    }
  }
}
