#include "viewer/sheet/date.h"

#include <array>
#include <ctime>

#include "viewer/words/words.h"

namespace scalpmark::viewer {

std::string date_today() {
  const std::array months{Words::tr("January"), Words::tr("February"), Words::tr("March"),
                          Words::tr("April"),   Words::tr("May"),      Words::tr("June"),
                          Words::tr("July"),    Words::tr("August"),   Words::tr("September"),
                          Words::tr("October"), Words::tr("November"), Words::tr("December")};
  const std::time_t now = std::time(nullptr);
  std::tm here{};
  localtime_r(&now, &here);
  return words(Words::tr("%1 %2 %3", "a date: day, month, year"),
               {std::to_string(here.tm_mday), months[static_cast<size_t>(here.tm_mon)].toStdString(),
                std::to_string(here.tm_year + 1900)});
}

}  // namespace scalpmark::viewer
