#include "models/files/built_on.h"

#include <assimp/version.h>
#include <vtkVersion.h>
#include <zlib.h>

#include <Eigen/Core>
#include <OpenMesh/Core/System/config.hh>
#include <boost/version.hpp>
#include <nlohmann/json.hpp>

namespace scalpmark::models {

namespace {

std::string dotted(unsigned a, unsigned b, unsigned c) {
  return std::to_string(a) + "." + std::to_string(b) + "." + std::to_string(c);
}

}  // namespace

std::vector<std::string> built_on() {
  return {"Eigen " + dotted(EIGEN_WORLD_VERSION, EIGEN_MAJOR_VERSION, EIGEN_MINOR_VERSION),
          std::string("VTK ") + vtkVersion::GetVTKVersion(),
          "Assimp " + dotted(aiGetVersionMajor(), aiGetVersionMinor(), aiGetVersionPatch()),
          "OpenMesh " + dotted((OM_VERSION & 0xf0000) >> 16, (OM_VERSION & 0x0ff00) >> 8, OM_VERSION & 0xff),
          "Boost " + dotted(BOOST_VERSION / 100000, BOOST_VERSION / 100 % 1000, BOOST_VERSION % 100),
          "JSON for Modern C++ " +
              dotted(NLOHMANN_JSON_VERSION_MAJOR, NLOHMANN_JSON_VERSION_MINOR, NLOHMANN_JSON_VERSION_PATCH),
          std::string("zlib ") + zlibVersion()};
}

}  // namespace scalpmark::models
