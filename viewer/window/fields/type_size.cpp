#include "viewer/window/fields/type_size.h"

namespace scalpmark::window {

double factor_of(TypeSize size) {
  switch (size) {
    case TypeSize::usual:
      return 1;
    case TypeSize::large:
      return 1.25;
    case TypeSize::largest:
      break;
  }
  return 1.5;
}

TypeSize usual_type_size(double dots_per_inch) {
  // Half way between 96, 120 (125 %) and 144 (150 %).
  constexpr double large_from = 108, largest_from = 132;
  if (dots_per_inch >= largest_from) return TypeSize::largest;
  return dots_per_inch >= large_from ? TypeSize::large : TypeSize::usual;
}

}  // namespace scalpmark::window
