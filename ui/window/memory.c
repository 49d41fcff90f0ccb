#include "memory.h"

#include <glib.h>

#define GROUP_NAME "window"

static const RwMemory first_start = {
  .width = 1280,
  .height = 800,
  .form_shown = TRUE,
  .drawer_shown = TRUE,
  .units = RW_UNITS_MM,
};

static char *
file_path (void)
{
  return g_build_filename (g_get_user_config_dir (), "rimwright", "window.ini", NULL);
}

/* A number within sensible bounds, else the fallback. */
static int
number (GKeyFile *file, const char *key, int least, int most, int fallback)
{
  g_autoptr (GError) error = NULL;
  int value = g_key_file_get_integer (file, GROUP_NAME, key, &error);

  return error == NULL && value >= least && value <= most ? value : fallback;
}

RwMemory
rw_memory_load (void)
{
  g_autoptr (GKeyFile) file = g_key_file_new ();
  g_autofree char *path = file_path ();
  RwMemory memory = first_start;

  if (!g_key_file_load_from_file (file, path, G_KEY_FILE_NONE, NULL))
    return memory;
  memory.width = number (file, "width", 640, 20000, memory.width);
  memory.height = number (file, "height", 480, 20000, memory.height);
  memory.maximised = number (file, "maximised", 0, 1, memory.maximised);
  memory.form_width = number (file, "form-width", 240, 1000, memory.form_width);
  memory.drawer_height = number (file, "drawer-height", 80, 5000, memory.drawer_height);
  memory.form_shown = number (file, "form-shown", 0, 1, memory.form_shown);
  memory.drawer_shown = number (file, "drawer-shown", 0, 1, memory.drawer_shown);
  memory.units = (RwUnits) number (file, "units", RW_UNITS_MM, RW_UNITS_FRACTION, memory.units);
  memory.toured = number (file, "toured", 0, 1, memory.toured);
  return memory;
}

void
rw_memory_save (const RwMemory *memory)
{
  g_autoptr (GKeyFile) file = g_key_file_new ();
  g_autofree char *path = file_path ();
  g_autofree char *folder = g_path_get_dirname (path);

  g_key_file_set_integer (file, GROUP_NAME, "width", memory->width);
  g_key_file_set_integer (file, GROUP_NAME, "height", memory->height);
  g_key_file_set_integer (file, GROUP_NAME, "maximised", memory->maximised);
  g_key_file_set_integer (file, GROUP_NAME, "form-width", memory->form_width);
  g_key_file_set_integer (file, GROUP_NAME, "drawer-height", memory->drawer_height);
  g_key_file_set_integer (file, GROUP_NAME, "form-shown", memory->form_shown);
  g_key_file_set_integer (file, GROUP_NAME, "drawer-shown", memory->drawer_shown);
  g_key_file_set_integer (file, GROUP_NAME, "units", memory->units);
  g_key_file_set_integer (file, GROUP_NAME, "toured", memory->toured);
  g_mkdir_with_parents (folder, 0700);
  g_key_file_save_to_file (file, path, NULL);
}
