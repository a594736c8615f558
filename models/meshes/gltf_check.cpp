#include "models/meshes/gltf_check.h"

#include <algorithm>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string_view>

#include "models/files/error.h"

namespace scalpmark::models {

namespace {

using nlohmann::json;

/// No file of up to half a gigabyte says more of anything; sums of two such never run over.
constexpr std::uint64_t most = std::uint64_t{1} << 30U;

Message invalid() {
  return Message::of("its description is not valid glTF");
}
Message unusable() {
  return Message::of("a number in its description is missing or not usable");
}
Message unknown() {
  return Message::of("a part of it is of no known kind");
}
Message too_long() {
  return Message::of("a part of it is longer than what it lies in");
}
Message cut_short() {
  return Message::of("it ends before all its elements have come");
}
Message too_few() {
  return Message::of("a part of its mesh has too few corners");
}

[[noreturn]] void refuse(const std::string& name, const Message& what) {
  throw ModelError(Message::of("%1 is damaged: %2; export it again.", name, what));
}

std::uint32_t word_at(const std::string& bytes, std::size_t at) {
  std::uint32_t word = 0;
  for (std::size_t k = 4; k-- > 0;) word = word << 8U | static_cast<unsigned char>(bytes[at + k]);
  return word;
}

/// What a .glb holds: the JSON, after a header of twelve bytes, and how many bytes of a buffer come after it.
struct Chunks {
  std::string_view json;
  std::uint64_t buffer_bytes = 0;
};

Chunks chunks_of(const std::string& bytes, const std::string& name) {
  constexpr std::size_t header = 12, chunk_header = 8;
  constexpr std::uint32_t json_type = 0x4E4F534A, buffer_type = 0x004E4942;
  if (bytes.size() < header + chunk_header || !bytes.starts_with("glTF") ||
      word_at(bytes, header + 4) != json_type)
    refuse(name, Message::of("it does not begin as a .glb file does"));
  const std::size_t length = word_at(bytes, 8), json_length = word_at(bytes, header);
  if (length > bytes.size() || length < header + chunk_header || json_length > length - header - chunk_header)
    refuse(name, cut_short());
  Chunks chunks;
  chunks.json = std::string_view(bytes).substr(header + chunk_header, json_length);
  while (chunks.json.ends_with('\0'))
    chunks.json.remove_suffix(1);  // which some programs fill it up with, instead of blanks
  const std::size_t next = header + chunk_header + (json_length + 3) / 4 * 4;
  if (next + chunk_header > length) return chunks;
  const std::size_t buffer_length = word_at(bytes, next);
  if (buffer_length > length - next - chunk_header) refuse(name, cut_short());
  if (word_at(bytes, next + 4) == buffer_type) chunks.buffer_bytes = buffer_length;
  return chunks;
}

/// What the file says of its parts, asked for with care.
class Document {
public:
  /// `own_bytes`: of the buffer that comes with the file, in a .glb.
  Document(const json& root, std::uint64_t own_bytes, const std::string& name)
      : root_(root), own_bytes_(own_bytes), name_(name) {}

  void check() const {
    const json* asset = member(root_, "asset");
    const json* version = asset == nullptr ? nullptr : member(*asset, "version");
    if (version == nullptr || !version->is_string()) refuse(name_, invalid());
    if (!version->get_ref<const std::string&>().starts_with("2"))
      throw ModelError(Message::of("%1 is not glTF 2; export it as glTF 2, or as a .ply file.", name_));
    for (const json& extension : list("extensionsRequired"))
      for (const char* packing : {"KHR_draco_mesh_compression", "EXT_meshopt_compression"})
        if (extension == packing)
          throw ModelError(Message::of(
              "%1 is packed (%2), which is not read here; export it without compression.", name_, packing));
    for (const json& buffer : list("buffers")) {
      const bool own = member(buffer, "uri") == nullptr;
      if (number(buffer, "byteLength") > (own ? own_bytes_ : most)) refuse(name_, cut_short());
    }
    for (const json& view : list("bufferViews")) check_view(view);
    for (const json& accessor : list("accessors")) check_accessor(accessor);
    for (const json& mesh : list("meshes"))
      for (const json& part : list_in(mesh, "primitives")) check_part(part);
  }

private:
  static const json* member(const json& object, const char* key) {
    if (!object.is_object()) return nullptr;
    const auto found = object.find(key);
    return found == object.end() ? nullptr : &*found;
  }
  [[nodiscard]] const json& list_in(const json& object, const char* key) const {
    static const json none = json::array();
    const json* found = member(object, key);
    if (found == nullptr) return none;
    if (!found->is_array()) refuse(name_, invalid());
    return *found;
  }
  [[nodiscard]] const json& list(const char* key) const { return list_in(root_, key); }

  /// A whole number that must be there, or may be left out where `otherwise` says what holds then.
  [[nodiscard]] std::uint64_t number(const json& object, const char* key,
                                     std::optional<std::uint64_t> otherwise = {}) const {
    const json* found = member(object, key);
    if (found == nullptr && otherwise) return *otherwise;
    if (found == nullptr || !found->is_number_unsigned() || found->get<std::uint64_t>() > most)
      refuse(name_, unusable());
    return found->get<std::uint64_t>();
  }
  [[nodiscard]] const json& at(const char* key, std::uint64_t index) const {
    const json& all = list(key);
    if (index >= all.size())
      refuse(name_, Message::of("its description points at a part that does not exist"));
    return all[static_cast<std::size_t>(index)];
  }

  void check_view(const json& view) const {
    const std::uint64_t end = number(view, "byteOffset", 0) + number(view, "byteLength");
    if (end > number(at("buffers", number(view, "buffer")), "byteLength")) refuse(name_, too_long());
  }

  [[nodiscard]] std::uint64_t component_size(const json& of_what) const {
    switch (number(of_what, "componentType")) {
      case 5120:  // BYTE
      case 5121:  // UNSIGNED_BYTE
        return 1;
      case 5122:  // SHORT
      case 5123:  // UNSIGNED_SHORT
        return 2;
      case 5125:  // UNSIGNED_INT
      case 5126:  // FLOAT
        return 4;
      default:
        refuse(name_, unknown());
    }
  }
  [[nodiscard]] std::uint64_t components(const json& accessor) const {
    const json* type = member(accessor, "type");
    const std::string text = type != nullptr && type->is_string() ? type->get<std::string>() : "";
    if (text == "SCALAR") return 1;
    if (text == "VEC2") return 2;
    if (text == "VEC3") return 3;
    if (text == "VEC4" || text == "MAT2") return 4;
    if (text == "MAT3") return 9;
    if (text == "MAT4") return 16;
    refuse(name_, unknown());
  }

  /// That `count` elements of `size` bytes lie within a view.
  void check_span(const json& of_what, std::uint64_t count, std::uint64_t size) const {
    const json& view = at("bufferViews", number(of_what, "bufferView"));
    const std::uint64_t stride = std::max(size, number(view, "byteStride", 0));
    const std::uint64_t length = number(view, "byteLength");
    const std::uint64_t before = number(of_what, "byteOffset", 0);
    if (before + size > length || (count - 1) > (length - before - size) / stride) refuse(name_, too_long());
  }

  void check_accessor(const json& accessor) const {
    const std::uint64_t count = number(accessor, "count");
    if (count == 0) refuse(name_, unusable());
    const std::uint64_t size = component_size(accessor) * components(accessor);
    if (member(accessor, "bufferView") != nullptr) check_span(accessor, count, size);
    const json* sparse = member(accessor, "sparse");
    if (sparse == nullptr) return;
    // Zeros but for a few: the memory it asks for stands nowhere in the file, so its count is held to what a
    // file could hold.
    if (count * size > most) refuse(name_, too_long());
    const std::uint64_t given = number(*sparse, "count");
    const json *indices = member(*sparse, "indices"), *values = member(*sparse, "values");
    if (given == 0 || given > count || indices == nullptr || values == nullptr) refuse(name_, unusable());
    check_span(*indices, given, component_size(*indices));
    check_span(*values, given, size);
  }

  void check_part(const json& part) const {
    const auto filled = [&](const json& accessor) -> const json& {
      if (member(accessor, "bufferView") == nullptr) refuse(name_, unusable());  // all zeros
      return accessor;
    };
    const json* attributes = member(part, "attributes");
    if (attributes == nullptr || !attributes->is_object()) refuse(name_, too_few());
    for (const auto& attribute : attributes->items())
      (void)at("accessors", number(*attributes, attribute.key().c_str()));
    const json& places = filled(at("accessors", number(*attributes, "POSITION")));
    if (components(places) != 3) refuse(name_, unknown());
    constexpr std::uint64_t real_numbers = 5126;
    if (number(places, "componentType") != real_numbers)  // Assimp 5.2 would take them for such
      throw ModelError(Message::of(
          "%1 gives its corners in whole numbers, which is not read here; export it without compression.",
          name_));
    std::uint64_t corners = number(places, "count");
    if (member(part, "indices") != nullptr) {
      const json& indices = filled(at("accessors", number(part, "indices")));
      if (components(indices) != 1) refuse(name_, unknown());
      corners = number(indices, "count");
    }
    const std::uint64_t mode = number(part, "mode", 4);
    if (mode > 6) refuse(name_, unknown());
    if (mode == 2)  // on which Assimp 5.2 falls over
      throw ModelError(
          Message::of("%1 holds lines that are closed in a loop; export the surface alone.", name_));
    const std::uint64_t fewest = mode == 0 ? 1 : mode <= 3 ? 2 : 3;  // points, lines, triangles
    if (corners < fewest) refuse(name_, too_few());
  }

  const json& root_;
  std::uint64_t own_bytes_;
  const std::string& name_;
};

}  // namespace

void check_gltf(const std::string& bytes, bool binary, const std::string& name) {
  const Chunks chunks = binary ? chunks_of(bytes, name) : Chunks{bytes, 0};
  const json root = json::parse(chunks.json, nullptr, false);
  if (!root.is_object()) refuse(name, invalid());
  Document(root, chunks.buffer_bytes, name).check();
}

}  // namespace scalpmark::models
