#include "viewer/words/coil_words.h"

#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::Region;

std::string touches(Region region) {
  switch (region) {
    case Region::scalp:
      return words(Words::tr("touches here"));
    case Region::left_ear:
      return words(Words::tr("touches the left ear"));
    case Region::right_ear:
      return words(Words::tr("touches the right ear"));
    case Region::face:
      return words(Words::tr("touches the brow or face"));
  }
  return "";
}

std::string hits(Region region) {
  switch (region) {
    case Region::scalp:
      return words(Words::tr("hits the scalp"));
    case Region::left_ear:
      return words(Words::tr("hits the left ear"));
    case Region::right_ear:
      return words(Words::tr("hits the right ear"));
    case Region::face:
      return words(Words::tr("hits the brow or face"));
  }
  return "";
}

}  // namespace scalpmark::viewer
