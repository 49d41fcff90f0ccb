/* Replays files through a fuzz target without a fuzzing engine: each argument is a file or a folder. */
#include "fuzz.h"

static int
replay_file (const char *path)
{
  g_autoptr (GError) error = NULL;
  g_autofree char   *data = NULL;
  gsize              size;

  if (!g_file_get_contents (path, &data, &size, &error))
    g_error ("%s", error->message);
  LLVMFuzzerTestOneInput ((const guint8 *) data, size);
  return 1;
}

static int
replay (const char *path)
{
  g_autoptr (GDir) folder = g_dir_open (path, 0, NULL);
  const char      *name;
  int              count = 0;

  if (folder == NULL)
    return replay_file (path);
  while ((name = g_dir_read_name (folder)) != NULL)
    {
      g_autofree char *inside = g_build_filename (path, name, NULL);

      count += replay (inside);
    }
  return count;
}

int
main (int argc, char *argv[])
{
  int count = 0;

  LLVMFuzzerInitialize (&argc, &argv);
  for (int i = 1; i < argc; i++)
    count += replay (argv[i]);
  g_print ("%d files replayed\n", count);
  return count > 0 ? 0 : 1;
}
