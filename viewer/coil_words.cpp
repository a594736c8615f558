#include "viewer/coil_words.h"

#include "viewer/words.h"

namespace scalpmark::viewer {

using geometry::Region;

std::string part_in_words(const std::string& part) {
  if (part == "coil") return said(Words::tr("coil"));
  if (part == "left wing") return said(Words::tr("left wing"));
  if (part == "right wing") return said(Words::tr("right wing"));
  if (part == "casing") return said(Words::tr("casing"));
  if (part == "bridge") return said(Words::tr("bridge", "between a coil's wings"));
  if (part == "handle") return said(Words::tr("handle"));
  return part;
}

std::string touches(Region region) {
  switch (region) {
    case Region::scalp:
      return said(Words::tr("touches here"));
    case Region::left_ear:
      return said(Words::tr("touches the left ear"));
    case Region::right_ear:
      return said(Words::tr("touches the right ear"));
    case Region::face:
      return said(Words::tr("touches the brow or face"));
  }
  return "";
}

std::string hits(Region region) {
  switch (region) {
    case Region::scalp:
      return said(Words::tr("hits the scalp"));
    case Region::left_ear:
      return said(Words::tr("hits the left ear"));
    case Region::right_ear:
      return said(Words::tr("hits the right ear"));
    case Region::face:
      return said(Words::tr("hits the brow or face"));
  }
  return "";
}

}  // namespace scalpmark::viewer
