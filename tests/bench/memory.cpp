// Peak memory of one job in a process of its own. usage: bench_memory mri | scan FILE | solve SKIN.ply
#include <sys/resource.h>

#include <cstdio>
#include <cstring>

#include "geometry/plan/solve.h"
#include "models/meshes/mesh_file.h"
#include "models/mri/mri_file.h"
#include "tests/support/coils.h"
#include "tests/support/electrode_table.h"
#include "tests/support/template_head.h"

using namespace scalpmark;

int main(int argc, char** argv) {
  const bool mri = argc == 2 && std::strcmp(argv[1], "mri") == 0;
  const bool solve = argc == 3 && std::strcmp(argv[1], "solve") == 0;
  const bool scan = argc == 3 && std::strcmp(argv[1], "scan") == 0;
  if (!mri && !scan && !solve) {
    std::fputs("usage: bench_memory mri | scan FILE | solve SKIN.ply\n", stderr);
    return 2;
  }
  if (mri) {
    (void)models::read_mri(tests::reference_file("ch2.nii.gz"));
  } else if (scan) {
    (void)models::read_mesh(argv[2]);
  } else {
    const auto table = tests::read_electrode_table(tests::reference_file("standard_1005.elc"));
    auto read = models::read_mesh(argv[2], models::Unit::millimetre);
    const geometry::Head head(std::move(read.skin),
                              {table.at("Nz"), table.at("Iz"), table.at("LPA"), table.at("RPA")});
    geometry::Case c;
    c.coil.model = tests::flat_coil();
    (void)geometry::solve(head, c);
  }
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  std::printf("%s: peak %.0f MB\n", argv[1], static_cast<double>(usage.ru_maxrss) / 1024.0);
  return 0;
}
