#include <string>

#include "models/heads/reading_process.h"
#include "models/heads/skin_reading.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"

namespace scalpmark::viewer {

bool answer_reading(const std::vector<std::string>& words) {
  if (words.size() != 7) throw UsageError("read-skin is for the program's own use; use head.");
  models::ReadingLimits limits;
  limits.memory_mb = std::stoul(words[4]);
  limits.cpu_seconds = static_cast<unsigned>(std::stoul(words[5]));
  const models::SkinRequest request{words[2] == "mri" ? models::HeadKind::mri : models::HeadKind::mesh,
                                    words[6],
                                    words[3] == "any" ? std::nullopt : std::optional(unit_named(words[3]))};
  const auto answers_to = models::take_over_output();
  return answers_to && models::answer_skin_request(request, limits, *answers_to);
}

}  // namespace scalpmark::viewer
