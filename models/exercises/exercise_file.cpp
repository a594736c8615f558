#include "models/exercises/exercise_file.h"

#include "geometry/exercise/drawn_head.h"
#include "models/cases/case_file.h"
#include "models/cases/head_json.h"
#include "models/exercises/exercise_json.h"
#include "models/files/error.h"
#include "models/files/safe_file.h"
#include "models/files/strict_json.h"
#include "models/generic/generic_head.h"

namespace scalpmark::models {

namespace g = geometry;
namespace fs = std::filesystem;

namespace {

constexpr std::size_t largest_exercise = 200000;  // bytes

}  // namespace

ExerciseSetup default_exercise() {
  ExerciseSetup setup;
  setup.exercise = g::whole_exercise();
  setup.the_case = default_case().the_case;
  // A spot beside the middle, so that the way from start to hotspot has to be thought about.
  g::take_hotspot(setup.the_case, {0, 1});
  return setup;
}

ExerciseSetup read_exercise(const fs::path& file) {
  return parse_exercise(read_whole(file, largest_exercise), folder_of(file), file.string());
}

ExerciseSetup parse_exercise(const std::string& text, const fs::path& folder, const std::string& name) {
  const JsonSource source{name, Message::of("exercise")};
  const nlohmann::json parsed = parse_strict(text, source);
  require_format(parsed, source, "scalpmark-exercise", 1);
  std::vector<std::string_view> keys{"format", "version"};
  keys.insert(keys.end(), exercise_keys.begin(), exercise_keys.end());
  const JsonGroup top(parsed, source, keys);
  return read_setup(top, parsed, folder);
}

std::string exercise_json(const ExerciseSetup& setup) {
  nlohmann::ordered_json out;
  out["format"] = "scalpmark-exercise";
  out["version"] = 1;
  write_setup(setup, out);
  return pretty_json(out);
}

void write_exercise(const fs::path& file, const ExerciseSetup& setup) {
  write_whole(file, exercise_json(found_from_folder(setup, folder_of(file))));
}

LoadedHead exercise_head(const ExerciseSetup& setup, const Progress& progress, const SkinReading& read) {
  if (!setup.exercise.drawn_head)
    return load_head(setup.head, setup.folder, setup.the_case.tape_mm, progress, read);
  return {g::drawn_head(generic_head(), setup.exercise.number).head,
          Message::of("head drawn for the number %1", setup.exercise.number),
          {}};
}

std::vector<Input> inputs_of(const fs::path& file, const ExerciseSetup& setup) {
  std::vector<Input> all{{Message::of("the exercise"), file}};
  if (!setup.exercise.drawn_head && setup.head.kind != HeadKind::generic)
    all.push_back({setup.head.kind == HeadKind::mesh ? Message::of("the scan") : Message::of("the MRI"),
                   setup.head.file.is_absolute() ? setup.head.file : setup.folder / setup.head.file});
  return all;
}

}  // namespace scalpmark::models
