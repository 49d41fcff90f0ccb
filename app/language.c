#include "language.h"

#include <glib.h>
#include <libintl.h>
#include <locale.h>

void
rw_language_speak (void)
{
  const char *folder = g_getenv ("RIMWRIGHT_LOCALE_DIR");

  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, folder != NULL ? folder : RW_LOCALE_DIR);
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
}
