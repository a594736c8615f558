// Volumes that no skin can be made of.
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <random>

#include "models/files/error.h"
#include "models/mri/mri_file.h"
#include "tests/support/mri_scans.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using namespace scalpmark::tests;
using Eigen::Vector3d;

namespace {

std::string refusal(const std::filesystem::path& file) {
  try {
    (void)models::read_mri(file);
  } catch (const models::ModelError& error) {
    return error.what();
  }
  return "(accepted)";
}

std::string refusal(const NiftiFile& file, double keep = 1, const std::string& name = "head.nii") {
  const TemporaryFolder folder;
  file.write(folder / name, keep);
  return refusal(folder / name);
}

/// A file whose header is fit to be spoiled: a small block.
NiftiFile small_block() {
  NiftiFile file;
  file.fill(20, 20, 20, [](int i, int j, int k) { return (i + j + k) % 7; });
  return file;
}

}  // namespace

TEST_CASE("a file that is no NIfTI volume is refused in a sentence") {
  const TemporaryFolder folder;
  CHECK_THAT(refusal(folder / "none.nii"), Catch::Contains("none.nii does not exist"));
  CHECK_THAT(refusal(folder / "."), Catch::Contains("is a folder"));
  CHECK_THAT(refusal("/dev/zero"), Catch::Contains("is not a plain file"));
  std::ofstream(folder / "empty.nii").flush();
  CHECK_THAT(refusal(folder / "empty.nii"), Catch::Contains("too short"));
  std::ofstream(folder / "text.nii") << std::string(5000, 'x');
  CHECK_THAT(refusal(folder / "text.nii"), Catch::Contains("is not a NIfTI volume"));
  std::ofstream(folder / "half.nii.gz") << "\x1f\x8b\x08garbage";
  CHECK_THAT(refusal(folder / "half.nii.gz"), Catch::Contains("too short or too damaged"));

  NiftiFile file = small_block();
  file.magic = "ni1";
  CHECK_THAT(refusal(file), Catch::Contains("in two files"));
  file.magic = "xyz";
  CHECK_THAT(refusal(file), Catch::Contains("is not a NIfTI volume"));
  file = small_block();
  file.header_size = 540;
  CHECK_THAT(refusal(file), Catch::Contains("NIfTI-2"));
}

TEST_CASE("a header that lies is refused before anything is allocated") {
  NiftiFile file = small_block();
  SECTION("more voxels than the file holds") {
    file.dim[3] = 900;
    CHECK_THAT(refusal(file), Catch::Contains("ends before the last voxel"));
  }
  SECTION("cut short") {
    CHECK_THAT(refusal(file, 0.7), Catch::Contains("ends before the last voxel"));
  }
  SECTION("cut short, gzipped") {
    CHECK_THAT(refusal(file, 0.7, "head.nii.gz"), Catch::Contains("ends before the last voxel"));
  }
  SECTION("longer than 1024") {
    file.dim[1] = 30000;
    CHECK_THAT(refusal(file), Catch::Contains("more than 1024"));
  }
  SECTION("more than 512 MB") {
    file.dim = {3, 1024, 1024, 1024, 1, 1, 1, 1};
    CHECK_THAT(refusal(file), Catch::Contains("larger than 512 MB"));
  }
  SECTION("no dimensions") {
    file.dim[0] = 0;
    CHECK_THAT(refusal(file), Catch::Contains("number of dimensions"));
  }
  SECTION("a side of zero or less") {
    const auto axis = GENERATE(1U, 2U, 3U);
    const auto length = GENERATE(std::int16_t{0}, std::int16_t{-5});
    file.dim[axis] = length;
    CHECK_THAT(refusal(file), Catch::Contains("claims a side of"));
  }
  SECTION("no volumes") {
    file.dim[0] = 4;
    file.dim[4] = 0;
    CHECK_THAT(refusal(file), Catch::Contains("claims a side of 0"));
  }
  SECTION("a picture") {
    file.dim[0] = GENERATE(std::int16_t{2}, std::int16_t{3});
    file.dim[3] = 1;
    CHECK_THAT(refusal(file), Catch::Contains("single picture"));
  }
  SECTION("voxel size") {
    const auto axis = GENERATE(1U, 2U, 3U);
    file.pixdim[axis] = GENERATE(0.0F, -1.0F, std::numeric_limits<float>::quiet_NaN(),
                                 std::numeric_limits<float>::infinity());
    CHECK_THAT(refusal(file), Catch::Contains("no usable voxel size"));
  }
  SECTION("colours") {
    file.kind = NiftiFile::Kind::rgb;
    CHECK_THAT(refusal(file), Catch::Contains("instead of intensities"));
  }
  SECTION("voxels start nowhere") {
    file.offset = GENERATE(0.0F, -352.0F, 352.5F, 1e20F, std::numeric_limits<float>::quiet_NaN());
    CHECK_THAT(refusal(file), Catch::Contains("where the voxels start"));
  }
}

TEST_CASE("a volume without a usable world frame is refused") {
  NiftiFile file = small_block();
  SECTION("neither sform nor qform") {
    file.sform_code = 0;
  }
  SECTION("not a number") {
    file.sform[3] = std::numeric_limits<float>::quiet_NaN();
  }
  SECTION("flattened") {
    file.sform = {1, 0, 0, 0, 1, 0, 0, 0, 0, 0, 1, 0};
  }
  SECTION("microscopic") {
    file.sform = {1e-6F, 0, 0, 0, 0, 1e-6F, 0, 0, 0, 0, 1e-6F, 0};
  }
  SECTION("astronomic") {
    file.sform = {1e6F, 0, 0, 0, 0, 1e6F, 0, 0, 0, 0, 1e6F, 0};
  }
  SECTION("far away") {
    file.sform[7] = 1e30F;
  }
  CHECK_THAT(refusal(file), Catch::Contains("says nowhere usable where its voxels lie"));
}

TEST_CASE("a volume without a head is refused", "[slow]") {
  const auto no_head = Catch::Contains("shows no head that stands out from the air");
  SECTION("every voxel alike") {
    CHECK_THAT(refusal(usual_scan([](const Vector3d&) { return 5; })), no_head);
  }
  SECTION("no number anywhere") {
    CHECK_THAT(refusal(usual_scan([](const Vector3d&) { return std::numeric_limits<double>::quiet_NaN(); })),
               Catch::Contains("no intensity that is a number"));
  }
  SECTION("a ball of 60 mm") {
    CHECK_THAT(refusal(usual_scan([](const Vector3d& p) { return 900 * edge(p.norm() - 30); })), no_head);
  }
  SECTION("a metre long") {
    const auto file = scan(placed({8, 8, 8}, {-400, -480, -430}), {101, 121, 109},
                           [](const Vector3d& p) { return 900 * edge(outside_by(p / 5) * 5, 8); });
    CHECK_THAT(refusal(file), no_head);
  }
  SECTION("noise only") {
    std::mt19937 random(3);
    std::normal_distribution<double> noise(0, 50);
    CHECK_THAT(refusal(usual_scan([&](const Vector3d&) { return std::hypot(noise(random), noise(random)); })),
               no_head);
  }
  SECTION("tissue to every edge") {
    CHECK_THAT(refusal(usual_scan([](const Vector3d& p) { return 900 * (1 - head_at(p)); })), no_head);
  }
}
