#pragma once

#include <zlib.h>

#include <Eigen/Core>
#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <functional>
#include <stdexcept>
#include <string>
#include <vector>

namespace scalpmark::tests {

/// A NIfTI-1 file to be written byte by byte (layout of the published nifti1.h); every field can be made to
/// lie.
struct NiftiFile {
  enum class Kind : std::int16_t { u8 = 2, i16 = 4, f32 = 16, rgb = 128 };

  std::int32_t header_size = 348;
  std::array<std::int16_t, 8> dim{3, 1, 1, 1, 1, 1, 1, 1};
  std::array<float, 8> pixdim{1, 1, 1, 1, 1, 1, 1, 1};
  Kind kind = Kind::f32;
  float offset = 352, slope = 0, intercept = 0;
  char units = 2;  // mm
  std::int16_t qform_code = 0, sform_code = 1;
  std::array<float, 6> quaternion{};  // b, c, d, offset x, y, z
  std::array<float, 12> sform{1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0};
  std::string magic = "n+1";
  bool swapped = false;       // the other byte order
  std::vector<double> value;  // stored numbers, the first index fastest

  void set_sform(const Eigen::Matrix4d& m) {
    for (int r = 0; r < 3; ++r)
      for (int c = 0; c < 4; ++c)
        sform[4 * static_cast<std::size_t>(r) + static_cast<std::size_t>(c)] = static_cast<float>(m(r, c));
    for (int c = 0; c < 3; ++c)
      pixdim[static_cast<std::size_t>(c) + 1] = static_cast<float>(m.col(c).head<3>().norm());
  }

  /// Fills `value` with intensity(i, j, k) over a block of this size.
  void fill(int nx, int ny, int nz, const std::function<double(int, int, int)>& intensity) {
    dim = {3,
           static_cast<std::int16_t>(nx),
           static_cast<std::int16_t>(ny),
           static_cast<std::int16_t>(nz),
           1,
           1,
           1,
           1};
    value.clear();
    for (int k = 0; k < nz; ++k)
      for (int j = 0; j < ny; ++j)
        for (int i = 0; i < nx; ++i) value.push_back(intensity(i, j, k));
  }

  [[nodiscard]] std::string bytes() const {
    std::string out(352, '\0');
    const auto put = [&](std::size_t at, const auto& number) {
      std::array<char, sizeof(number)> raw{};
      std::memcpy(raw.data(), &number, sizeof(number));
      if (swapped) std::reverse(raw.begin(), raw.end());
      if (out.size() < at + raw.size()) out.resize(at + raw.size());
      std::copy(raw.begin(), raw.end(), out.begin() + static_cast<std::ptrdiff_t>(at));
    };
    put(0, header_size);
    for (std::size_t i = 0; i < 8; ++i) put(40 + 2 * i, dim[i]);
    put(70, static_cast<std::int16_t>(kind));
    put(72, static_cast<std::int16_t>(kind == Kind::u8    ? 8
                                      : kind == Kind::i16 ? 16
                                      : kind == Kind::f32 ? 32
                                                          : 24));
    for (std::size_t i = 0; i < 8; ++i) put(76 + 4 * i, pixdim[i]);
    put(108, offset);
    put(112, slope);
    put(116, intercept);
    out[123] = units;
    put(252, qform_code);
    put(254, sform_code);
    for (std::size_t i = 0; i < 6; ++i) put(256 + 4 * i, quaternion[i]);
    for (std::size_t i = 0; i < 12; ++i) put(280 + 4 * i, sform[i]);
    for (std::size_t i = 0; i < magic.size(); ++i) out[344 + i] = magic[i];
    std::size_t at = 352;
    const std::size_t width = kind == Kind::u8 ? 1 : kind == Kind::i16 ? 2 : kind == Kind::f32 ? 4 : 3;
    out.resize(at + width * value.size());
    for (const double v : value) {
      if (kind == Kind::u8) put(at, static_cast<std::uint8_t>(std::lround(v)));
      if (kind == Kind::i16) put(at, static_cast<std::int16_t>(std::lround(v)));
      if (kind == Kind::f32) put(at, static_cast<float>(v));
      at += width;
    }
    return out;
  }

  /// Gzipped when the name ends in .gz. `keep` < 1 cuts the file short (after compressing).
  void write(const std::filesystem::path& file, double keep = 1) const {
    std::string data = bytes();
    if (file.extension() == ".gz") {
      const gzFile gz = gzopen(file.c_str(), "wb1");
      if (gz == nullptr || gzwrite(gz, data.data(), static_cast<unsigned>(data.size())) <= 0 ||
          gzclose(gz) != Z_OK)
        throw std::runtime_error("cannot write " + file.string());
    } else {
      std::ofstream(file, std::ios::binary) << data;
    }
    if (keep < 1)
      std::filesystem::resize_file(
          file, static_cast<std::uintmax_t>(keep * static_cast<double>(std::filesystem::file_size(file))));
  }
};

}  // namespace scalpmark::tests
