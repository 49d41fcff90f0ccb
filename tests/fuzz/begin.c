/* A warning of a library is a finding: it ends the target in a way that the fuzzing engine takes note of. */
#include "fuzz.h"

#include <stdlib.h>

static GLogWriterOutput
write_log (GLogLevelFlags level, const GLogField *fields, gsize count, gpointer data)
{
  if (level > G_LOG_LEVEL_WARNING)
    return G_LOG_WRITER_HANDLED;
  g_log_writer_standard_streams (level, fields, count, data);
  abort ();
}

int
LLVMFuzzerInitialize (int *argc, char ***argv)
{
  g_log_set_writer_func (write_log, NULL, NULL);
  return 0;
}
