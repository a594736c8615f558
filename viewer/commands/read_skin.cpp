#include <fcntl.h>
#include <unistd.h>

#include <string>

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
  // What libraries print must not get between the answers.
  const int answers_to = ::dup(STDOUT_FILENO);
  const int nowhere = ::open("/dev/null", O_WRONLY);
  if (answers_to < 0 || nowhere < 0 || ::dup2(nowhere, STDOUT_FILENO) < 0) return false;
  return models::answer_skin_request(request, limits, answers_to);
}

}  // namespace scalpmark::viewer
