#pragma once

namespace scalpmark::geometry {

/// What a setting may be, ends included.
struct Range {
  double low = 0, high = 0;
  [[nodiscard]] constexpr bool holds(double value) const {
    return value >= low && value <= high;
  }  // false for NaN
};

/// The accepted range of every setting, mm and degrees. The case reader, the kernel and the worksheet use
/// these alone.
namespace ranges {
inline constexpr Range nasion_inion_mm{280, 440};
inline constexpr Range tragus_tragus_mm{280, 440};
inline constexpr Range circumference_mm{460, 660};
inline constexpr Range lateral_mm{0, 100};
inline constexpr Range anterior_mm{-50, 50};
inline constexpr Range pitch_mm{2, 20};
inline constexpr Range angle_deg{-180, 180};
inline constexpr Range centre_to_edge_mm{10, 150};
inline constexpr Range lift_mm{0, 30};
inline constexpr Range spot{-1, 1};
inline constexpr Range hotspot_off_mm{-40, 40};
inline constexpr Range distance_mm{1, 100};
inline constexpr Range brim_over_nasion_mm{5, 60};
inline constexpr Range brim_height_mm{0, 200};
inline constexpr Range tape_reading_mm{1, 450};  // on a head: from next to nothing to around it
inline constexpr Range output_percent{1, 100};   // of a stimulator's most
inline constexpr Range output_step_percent{1, 50};
inline constexpr Range error_mm{0, 15};
inline constexpr Range error_deg{0, 20};
inline constexpr Range percent{0, 100};
}  // namespace ranges

}  // namespace scalpmark::geometry
