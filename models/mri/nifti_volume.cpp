#include "models/mri/nifti_volume.h"

#include <vtkCallbackCommand.h>
#include <vtkExecutive.h>
#include <vtkImageData.h>
#include <vtkMatrix4x4.h>
#include <vtkNIFTIImageReader.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <zlib.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>
#include <memory>
#include <optional>
#include <string_view>

#include "models/files/error.h"

namespace scalpmark::models {

namespace {

constexpr std::int64_t longest_edge = 1024;        // voxels
constexpr std::int64_t largest_bytes = 512 << 20;  // of one volume as stored

// --- The header
// ------------------------------------------------------------------------------------------------

struct Header {
  std::array<std::int64_t, 8> dim{};
  std::array<float, 8> pixdim{};
  int datatype = 0, sform_code = 0, qform_code = 0, units = 0;
  double offset = 0, slope = 0, intercept = 0;
};

class Bytes {
public:
  Bytes(const std::array<unsigned char, 352>& raw, bool swapped) : raw_(raw), swapped_(swapped) {}
  template <class T>
  [[nodiscard]] T at(std::size_t offset) const {
    std::array<unsigned char, sizeof(T)> bytes{};
    std::copy_n(raw_.begin() + static_cast<std::ptrdiff_t>(offset), sizeof(T), bytes.begin());
    if (swapped_) std::reverse(bytes.begin(), bytes.end());
    return std::bit_cast<T>(bytes);
  }

private:
  const std::array<unsigned char, 352>& raw_;
  bool swapped_;
};

/// Bytes of one intensity, or nothing for colours, complex numbers and kinds we do not know (NIfTI-1
/// `datatype`).
std::optional<int> bytes_of(int datatype) {
  switch (datatype) {
    case 2:  // unsigned 8
    case 256:
      return 1;
    case 4:  // signed 16
    case 512:
      return 2;
    case 8:  // signed 32
    case 768:
    case 16:  // float
      return 4;
    case 64:    // double
    case 1024:  // signed 64
    case 1280:
      return 8;
    default:
      return {};
  }
}

using GzFile = std::unique_ptr<gzFile_s, decltype(&gzclose)>;

Header read_header(const std::filesystem::path& file, gzFile open) {
  std::array<unsigned char, 352> raw{};
  const int got = gzread(open, raw.data(), static_cast<unsigned>(raw.size()));
  if (got < 352)
    throw ModelError(
        Message::of("%1 is too short or too damaged to be a NIfTI volume; export it again.", file.string()));
  const std::uint32_t first = std::uint32_t{raw[0]} | std::uint32_t{raw[1]} << 8 |
                              std::uint32_t{raw[2]} << 16 | std::uint32_t{raw[3]} << 24;
  if (first == 540 || first == 0x1c020000U)
    throw ModelError(
        Message::of("%1 is a NIfTI-2 file, which is not read here; convert it to NIfTI-1.", file.string()));
  const bool little = first == 348;
  if (!little && first != 0x5c010000U)
    throw ModelError(Message::of("%1 is not a NIfTI volume; choose a .nii or .nii.gz file.", file.string()));
  const std::string_view magic(reinterpret_cast<const char*>(raw.data()) + 344, 3);
  if (magic == "ni1")
    throw ModelError(
        Message::of("%1 keeps header and image in two files; convert it to one .nii file.", file.string()));
  if (magic != "n+1")
    throw ModelError(Message::of("%1 is not a NIfTI volume; choose a .nii or .nii.gz file.", file.string()));
  const Bytes bytes(raw, little != (std::endian::native == std::endian::little));
  Header h;
  for (std::size_t i = 0; i < 8; ++i) {
    h.dim[i] = bytes.at<std::int16_t>(40 + 2 * i);
    h.pixdim[i] = bytes.at<float>(76 + 4 * i);
  }
  h.datatype = bytes.at<std::int16_t>(70);
  h.offset = static_cast<double>(bytes.at<float>(108));
  h.slope = static_cast<double>(bytes.at<float>(112));
  h.intercept = static_cast<double>(bytes.at<float>(116));
  h.units = raw[123] & 7;
  h.qform_code = bytes.at<std::int16_t>(252);
  h.sform_code = bytes.at<std::int16_t>(254);
  return h;
}

/// Voxels of the first volume. Everything VTK would trust is checked here.
std::int64_t check_header(const std::filesystem::path& file, const Header& h) {
  if (h.dim[0] < 1 || h.dim[0] > 7)
    throw ModelError(
        Message::of("%1 has a damaged header (number of dimensions); export it again.", file.string()));
  if (h.dim[0] < 3)
    throw ModelError(Message::of("%1 is a single picture, not a volume; choose a 3-D scan of the whole head.",
                                 file.string()));
  std::int64_t voxels = 1;
  for (std::size_t i = 1; i <= 3; ++i) {
    if (h.dim[i] < 1)
      throw ModelError(
          Message::of("%1 claims a side of %2 voxels; export it again.", file.string(), h.dim[i]));
    if (h.dim[i] == 1)
      throw ModelError(Message::of(
          "%1 is a single picture, not a volume; choose a 3-D scan of the whole head.", file.string()));
    if (h.dim[i] > longest_edge)
      throw ModelError(Message::of("%1 is %2 voxels long on one side, more than 1024; resample it to 1 mm.",
                                   file.string(), h.dim[i]));
    if (!std::isfinite(h.pixdim[i]) || h.pixdim[i] <= 0)
      throw ModelError(
          Message::of("%1 gives no usable voxel size (pixdim %2); export it again.", file.string(), i));
    voxels *= h.dim[i];
  }
  for (std::size_t i = 4; i <= static_cast<std::size_t>(h.dim[0]); ++i)
    if (h.dim[i] < 1)
      throw ModelError(
          Message::of("%1 claims a side of %2 voxels; export it again.", file.string(), h.dim[i]));
  const auto size = bytes_of(h.datatype);
  if (!size)
    throw ModelError(Message::of(
        "%1 holds colours, complex numbers or another kind of voxel (datatype %2) instead of intensities; export it as 16-bit numbers.",
        file.string(), h.datatype));
  if (voxels * *size > largest_bytes)
    throw ModelError(Message::of("%1 is larger than 512 MB; resample it to 1 mm.", file.string()));
  if (!std::isfinite(h.offset) || h.offset < 352 || h.offset > 1e8 || h.offset != std::floor(h.offset))
    throw ModelError(
        Message::of("%1 has a damaged header (where the voxels start); export it again.", file.string()));
  return voxels;
}

/// A header may claim more than the file holds; counting first keeps VTK from reading half a head.
void check_length(const std::filesystem::path& file, gzFile open, std::int64_t wanted) {
  std::vector<char> buffer(1 << 18);
  std::int64_t have = 352;
  while (have < wanted) {
    const auto ask = std::min<std::int64_t>(static_cast<std::int64_t>(buffer.size()), wanted - have);
    const int got = gzread(open, buffer.data(), static_cast<unsigned>(ask));
    if (got <= 0)
      throw ModelError(Message::of(
          "%1 ends before the last voxel its header promises; copy or export it again.", file.string()));
    have += got;
  }
}

// --- World frame
// ------------------------------------------------------------------------------------------------

double mm_per_unit(int units) {
  return units == 1 ? 1000.0 : units == 3 ? 0.001 : 1.0;  // NIfTI-1 `xyzt_units`; unknown is taken as mm
}

/// Index to mm, or nothing when it cannot be a head scan's: not finite, voxels flattened, absurdly small or
/// large.
std::optional<Eigen::Matrix4d> usable(vtkMatrix4x4* matrix, const std::array<double, 3>& spacing,
                                      double unit_mm) {
  if (matrix == nullptr) return {};
  Eigen::Matrix4d world;
  for (int r = 0; r < 4; ++r)
    for (int c = 0; c < 4; ++c) world(r, c) = matrix->GetElement(r, c);
  // VTK keeps the voxel size in the image, not in the matrix.
  for (int c = 0; c < 3; ++c) world.col(c) *= spacing[static_cast<std::size_t>(c)];
  world.topRows<3>() *= unit_mm;
  if (!world.allFinite()) return {};
  const Eigen::Matrix3d axes = world.topLeftCorner<3, 3>();
  const Eigen::Vector3d size = axes.colwise().norm().transpose();
  if (size.minCoeff() < 0.05 || size.maxCoeff() > 20) return {};    // mm; head scans have 0.3 to 5
  if (std::abs(axes.determinant()) < 0.2 * size.prod()) return {};  // axes nearly in one plane
  if (world.col(3).head<3>().norm() > 1e5) return {};               // 100 m from the origin: garbage
  return world;
}

// --- Voxels
// ------------------------------------------------------------------------------------------------

template <class T>
void copy_scaled(const void* from, double slope, double intercept, std::vector<float>& to) {
  const T* source = static_cast<const T*>(from);
  for (std::size_t i = 0; i < to.size(); ++i)
    to[i] = static_cast<float>(static_cast<double>(source[i]) * slope + intercept);
}

void copy_values(const std::filesystem::path& file, vtkImageData& image, double slope, double intercept,
                 std::vector<float>& to) {
  const void* from = image.GetScalarPointer();
  switch (image.GetScalarType()) {
    vtkTemplateMacro(copy_scaled<VTK_TT>(from, slope, intercept, to));
    default:
      throw ModelError(Message::of(
          "%1 holds a kind of voxel that is not read here; export it as 16-bit numbers.", file.string()));
  }
}

void remember(vtkObject*, unsigned long, void* store, void* text) {
  if (text != nullptr) *static_cast<std::string*>(store) += static_cast<const char*>(text);
}

void check_is_plain_file(const std::filesystem::path& file) {
  std::error_code trouble;
  const auto status = std::filesystem::status(file, trouble);
  if (!std::filesystem::exists(status))
    throw ModelError(Message::of("%1 does not exist; check the name.", file.string()));
  if (std::filesystem::is_directory(status))
    throw ModelError(Message::of("%1 is a folder; choose a .nii or .nii.gz file.", file.string()));
  if (!std::filesystem::is_regular_file(status))
    throw ModelError(Message::of("%1 is not a plain file; choose a .nii or .nii.gz file.", file.string()));
}

struct CheckedHeader {
  Header header;
  std::int64_t voxels = 0;
};

/// The header, once it is known that the file is as long as it says.
CheckedHeader read_checked_header(const std::filesystem::path& file) {
  CheckedHeader read;
  const GzFile open(gzopen(file.c_str(), "rb"), &gzclose);
  if (!open) throw ModelError(Message::of("%1 cannot be opened; check who may read it.", file.string()));
  read.header = read_header(file, open.get());
  read.voxels = check_header(file, read.header);
  check_length(file, open.get(),
               static_cast<std::int64_t>(read.header.offset) + read.voxels * *bytes_of(read.header.datatype));
  return read;
}

}  // namespace

NiftiVolume read_nifti(const std::filesystem::path& file) {
  check_is_plain_file(file);
  const auto [header, voxels] = read_checked_header(file);
  NiftiVolume result;
  std::int64_t volumes = 1;
  for (std::size_t i = 4; i <= static_cast<std::size_t>(header.dim[0]); ++i) volumes *= header.dim[i];
  if (volumes > 1) result.notes.push_back(Message::of("Took the first of %1 volumes in the file.", volumes));

  vtkNew<vtkNIFTIImageReader> reader;
  std::string complaint;
  vtkNew<vtkCallbackCommand> listener;
  listener->SetCallback(remember);
  listener->SetClientData(&complaint);
  for (const auto event : {vtkCommand::ErrorEvent, vtkCommand::WarningEvent}) {
    reader->AddObserver(event, listener);
    reader->GetExecutive()->AddObserver(event, listener);
  }
  reader->SetFileName(file.c_str());
  reader->Update();
  vtkImageData* image = reader->GetOutput();
  std::array<int, 3> size{};
  image->GetDimensions(size.data());
  bool as_promised = reader->GetErrorCode() == 0 && image->GetNumberOfScalarComponents() == 1 &&
                     image->GetPointData()->GetScalars() != nullptr;
  for (std::size_t i = 0; i < 3; ++i) as_promised = as_promised && size[i] == header.dim[i + 1];
  if (!as_promised)
    throw ModelError(Message::of("%1 could not be read as a NIfTI volume; export it again.", file.string()));

  Volume& volume = result.volume;
  volume.size = size;
  std::array<double, 3> spacing{};
  image->GetSpacing(spacing.data());
  const double unit_mm = mm_per_unit(header.units);
  std::optional<Eigen::Matrix4d> world;
  if (header.sform_code > 0) {
    world = usable(reader->GetSFormMatrix(), spacing, unit_mm);
    if (!world && header.qform_code > 0)
      result.notes.emplace_back(
          Message::of("The file's sform cannot be used; its qform gave the world frame."));
  }
  if (!world && header.qform_code > 0) world = usable(reader->GetQFormMatrix(), spacing, unit_mm);
  if (!world)
    throw ModelError(Message::of(
        "%1 says nowhere usable where its voxels lie (no sform or qform); export it again with its position.",
        file.string()));
  volume.world = *world;

  // A slope of zero means that the intensities are stored as they are (NIfTI-1 `scl_slope`).
  const bool scaled = header.slope != 0 && std::isfinite(header.slope) && std::isfinite(header.intercept);
  volume.value.resize(static_cast<std::size_t>(voxels));
  copy_values(file, *image, scaled ? header.slope : 1.0, scaled ? header.intercept : 0.0, volume.value);

  float lowest = std::numeric_limits<float>::infinity();
  std::int64_t holes = 0;
  for (const float v : volume.value)
    if (std::isfinite(v))
      lowest = std::min(lowest, v);
    else
      ++holes;
  if (holes == voxels)
    throw ModelError(Message::of("%1 holds no intensity that is a number; export it again.", file.string()));
  if (holes > 0) {
    for (float& v : volume.value)
      if (!std::isfinite(v)) v = lowest;
    result.notes.push_back(Message::of("Took %1 voxels without a number for air.", holes));
  }
  return result;
}

}  // namespace scalpmark::models
