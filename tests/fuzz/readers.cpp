#include "tests/fuzz/readers.h"

#include <unistd.h>

#include <filesystem>
#include <new>

#include "geometry/base/error.h"
#include "geometry/base/message.h"
#include "models/cases/case_file.h"
#include "models/cases/visits_csv.h"
#include "models/exercises/exercise_file.h"
#include "models/exercises/result_file.h"
#include "models/files/error.h"
#include "tests/support/mesh_writers.h"
#include "tests/support/nifti_writer.h"
#include "tests/support/shapes.h"
#include "tests/support/temporary_folder.h"

namespace scalpmark::fuzz {

namespace {

/// What a refusal must be: a sentence, short enough to be read, that holds nothing a terminal would obey.
void check_sentence(const std::string& sentence) {
  if (sentence.empty() || sentence.back() != '.' || sentence.size() > 1000) std::abort();
  if (geometry::on_one_line(sentence) != sentence) std::abort();
}

template <class Work>
void refuse_or_read(const Work& work) {
  try {
    work();
  } catch (const models::ModelError& error) {
    check_sentence(error.what());
  } catch (const geometry::GeometryError& error) {
    check_sentence(error.what());
  } catch (const std::bad_alloc&) {
  }
}

void read_case(const Reader&, const std::string& text, const models::SkinReading&) {
  refuse_or_read([&] {
    const models::CaseFile case_file = models::parse_case(text, "/cases", "fuzzed.json");
    // What was taken must come back as it was.
    const std::string written = models::case_json(case_file);
    if (models::case_json(models::parse_case(written, "/cases", "again.json")) != written) std::abort();
  });
}

void read_exercise(const Reader&, const std::string& text, const models::SkinReading&) {
  refuse_or_read([&] {
    const std::string written = models::exercise_json(models::parse_exercise(text, "/cases", "fuzzed.json"));
    if (models::exercise_json(models::parse_exercise(written, "/cases", "again.json")) != written)
      std::abort();
  });
}

void read_result(const Reader&, const std::string& text, const models::SkinReading&) {
  refuse_or_read([&] {
    const std::string written = models::result_json(models::parse_result(text, "/cases", "fuzzed.json"));
    if (models::result_json(models::parse_result(written, "/cases", "again.json")) != written) std::abort();
  });
}

models::ExerciseResult done_in_part() {
  models::ExerciseResult result{models::default_exercise(), "RL", {}};
  geometry::Attempt& attempt = result.attempts.emplace_back();
  put_mark(attempt, {geometry::Task::vertex, 0}, {0, 0, 90});
  type_reading(attempt, {geometry::Task::three_tapes, 0}, 355, {{0, 90, 0}, {0, 0, 90}, {0, -90, 0}});
  lay_coil_down(attempt, {geometry::Task::coil, 0}, {-50, 20, 80}, 44.5);
  attempt.seconds[geometry::Task::vertex] = 12.5;
  return result;
}

/// Bytes as a table of visits and as one of pulses.
void read_tables(const Reader&, const std::string& text, const models::SkinReading&) {
  const models::NamedTable table{text, "fuzzed.csv"};
  for (const bool visits : {true, false})
    refuse_or_read([&] {
      const geometry::Visits read =
          models::with_tables({geometry::Visit{}}, visits ? &table : nullptr, visits ? nullptr : &table);
      // What was taken comes back as it was; the visit to begin with has no date of its own.
      const models::NamedTable written{models::pulses_csv(read), "again.csv"};
      geometry::Visits bare;
      for (const auto& each : read) {
        geometry::Visit visit = *each;
        visit.pulses.clear();
        bare.emplace_back(visit);
      }
      if (!(models::with_tables(bare, nullptr, &written) == read)) std::abort();
    });
}

geometry::Visits two_visits() {
  geometry::Visit visit;
  visit.date = {2026, 11, 26};
  visit.by = "RL";
  visit.pulses = {
      {geometry::GridPosition{0, 1}, 50, geometry::SeenAnswer::thumb, geometry::TimeOfDay{10, 32, 5}, {}},
      {{}, 60, geometry::SeenAnswer::none, {}, geometry::SeenAnswer::index}};
  visit.site_tape = {83.1, 113.0, {}, 228.0};
  visit.brim = {20.0, {}, {}, 19.0};
  visit.remarks = "hair wet, \"early\"";
  return {visit, visit};
}

void read_file(const Reader& reader, const std::string& bytes, const models::SkinReading& reading) {
  static const tests::TemporaryFolder folder;
  const auto file = folder / ("fuzzed." + reader.name);
  tests::write_bytes(file, bytes);
  const auto kind = reader.name.starts_with("nii") ? models::HeadKind::mri : models::HeadKind::mesh;
  refuse_or_read([&] { (void)reading({kind, file, {}}, {}); });
}

tests::NiftiFile small_scan() {
  tests::NiftiFile scan;
  Eigen::Matrix4d to_world = Eigen::Matrix4d::Identity();
  to_world.topLeftCorner<3, 3>() *= 10;
  to_world.topRightCorner<3, 1>().setConstant(-110);
  scan.set_sform(to_world);
  scan.kind = tests::NiftiFile::Kind::u8;
  scan.fill(23, 23, 23, [](int i, int j, int k) {
    return Eigen::Vector3d(i - 11, j - 11, k - 11).norm() < 9 ? 200.0 : 3.0;
  });
  return scan;
}

}  // namespace

const std::vector<Reader>& readers() {
  static const std::vector<Reader> all = [] {
    const tests::RawMesh mesh(tests::sphere(90, 2));
    models::CaseFile mri = models::default_case();
    mri.head.kind = models::HeadKind::mri;
    mri.head.file = "t1.nii.gz";
    mri.head.fiducials = geometry::Fiducials{{0, 90, 0}, {0, -90, 0}, {-80, 0, 0}, {80, 0, 0}};
    models::CaseFile visited = models::default_case();
    visited.the_case.visits = two_visits();
    const tests::TemporaryFolder folder;
    const auto zipped = folder / "seed.nii.gz";
    small_scan().write(zipped);
    return std::vector<Reader>{
        {"case",
         {models::case_json(models::default_case()), models::case_json(mri), models::case_json(visited)},
         read_case},
        {"exercise", {models::exercise_json(models::default_exercise())}, read_exercise},
        {"result", {models::result_json(done_in_part())}, read_result},
        {"csv", {models::visits_csv(two_visits()), models::pulses_csv(two_visits())}, read_tables},
        {"obj", {tests::obj_text(mesh)}, read_file},
        {"ply", {tests::ply_text(mesh), tests::ply_bytes(mesh)}, read_file},
        {"stl", {tests::stl_text(mesh), tests::stl_bytes(mesh)}, read_file},
        {"gltf",
         {tests::gltf_json(mesh, "mesh.bin", tests::no_transform, tests::no_transform).dump(),
          tests::gltf_json(mesh, tests::data_uri(tests::gltf_buffer(mesh)), tests::no_transform,
                           tests::no_transform)
              .dump()},
         read_file},
        {"glb", {tests::glb_bytes(mesh)}, read_file},
        {"nii", {small_scan().bytes()}, read_file},
        {"nii.gz", {tests::read_bytes(zipped)}, read_file}};
  }();
  return all;
}

}  // namespace scalpmark::fuzz
