/* The command line: whatever the words, a command ends with a status that it may end with, and with 2 says one
 * sentence.
 *
 * The words stand one a line, the command first; what follows an empty line is on standard input and in the file "in".
 * Each run has an empty folder to itself.  Words that would reach beyond it, or ask for hours of work, are not run. */
#include "fuzz.h"

#include <fcntl.h>
#include <ftw.h>
#include <glib/gstdio.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/mman.h>
#include <unistd.h>

#include "cli.h"

#define MOST_DIGITS 3 /* of a number on its own: builds, dots per inch */
#define LEAST_SENTENCE 20

/* ---- what is not run ---- */

/* A slash belongs to a fraction, and fractions to settings. */
static gboolean
reaches_out (const char *word, const char *before)
{
  return strchr (word, '/') != NULL && !g_str_has_prefix (word, "--set=") && !g_str_has_prefix (word, "--measured=")
         && strcmp (before, "--set") != 0 && strcmp (before, "--measured") != 0;
}

static gboolean
takes_hours (char **words)
{
  gboolean papers = strcmp (words[0], "papers") == 0, only = FALSE;

  for (int i = 1; words[i] != NULL; i++)
    {
      const char *value = strrchr (words[i], '=') != NULL ? strrchr (words[i], '=') + 1 : words[i];

      only = only || g_str_has_prefix (words[i], "--only");
      if (strspn (value, "+0123456789") > MOST_DIGITS && !g_str_has_prefix (words[i], "--set")
          && !g_str_has_prefix (words[i], "--seed"))
        return TRUE;
    }
  return papers && !only;
}

static gboolean
may_run (char **words)
{
  if (words[0] == NULL || !rw_cli_knows (words[0]))
    return FALSE;
  for (int i = 0; words[i] != NULL; i++)
    if (reaches_out (words[i], i > 0 ? words[i - 1] : ""))
      return FALSE;
  return !takes_hours (words);
}

/* ---- the folder, and the three standard files ---- */

static char *folder;

static int
remove_one (const char *path, const struct stat *stat, int kind, struct FTW *where)
{
  if (where->level > 0)
    g_assert_cmpint (remove (path), ==, 0);
  return 0;
}

static void
clear_folder (void)
{
  nftw (folder, remove_one, 16, FTW_DEPTH | FTW_PHYS);
}

static void
leave_folder (void)
{
  clear_folder ();
  g_rmdir (folder);
  g_free (folder);
}

static void
set_up (void)
{
  static gsize done;
  int input;

  if (!g_once_init_enter (&done))
    return;
  folder = g_dir_make_tmp ("rimwright-fuzz-XXXXXX", NULL);
  input = memfd_create ("input", MFD_CLOEXEC);
  g_assert_true (folder != NULL && chdir (folder) == 0 && dup2 (input, STDIN_FILENO) == STDIN_FILENO);
  close (input);
  atexit (leave_folder);
  g_once_init_leave (&done, 1);
}

static void
put_input (const char *text, gsize length)
{
  g_assert_true (ftruncate (STDIN_FILENO, 0) == 0 && lseek (STDIN_FILENO, 0, SEEK_SET) == 0);
  g_assert_cmpint (write (STDIN_FILENO, text, length), ==, (gssize) length);
  g_assert_cmpint (lseek (STDIN_FILENO, 0, SEEK_SET), ==, 0);
  g_assert_true (g_file_set_contents ("in", text, (gssize) length, NULL));
}

/* ---- a run ---- */

static void
check_sentence (const char *said)
{
  g_assert_true (g_str_has_prefix (said, "rimwright: ") && g_str_has_suffix (said, ".\n"));
  g_assert_cmpuint (strlen (said), >=, LEAST_SENTENCE);
  g_assert_true (strchr (said, '\n')[1] == '\0' && g_utf8_validate (said, -1, NULL));
}

/* The standard files of C are taken out for the run; those below it stay, for what a sanitizer has to say. */
static void
run (char **words)
{
  gboolean verdict = strcmp (words[0], "check") == 0 || strcmp (words[0], "cut") == 0;
  g_auto (GStrv) all = g_new0 (char *, g_strv_length (words) + 2);
  FILE *out = stdout, *err = stderr;
  char *said = NULL;
  size_t length;
  int status;

  all[0] = g_strdup ("rimwright");
  for (int i = 0; words[i] != NULL; i++)
    all[i + 1] = g_strdup (words[i]);
  stdout = fopen ("/dev/null", "w");
  stderr = open_memstream (&said, &length);
  status = rw_cli_run ((int) g_strv_length (all), all);
  fclose (stdout);
  fclose (stderr);
  stdout = out;
  stderr = err;

  if (status == 2)
    check_sentence (said);
  else
    g_assert_true (*said == '\0' && (status == 0 || (status == 1 && verdict)));
  free (said);
}

int
LLVMFuzzerTestOneInput (const guint8 *data, size_t size)
{
  g_autofree char *text = g_strndup ((const char *) data, size);
  char *input = strstr (text, "\n\n");
  gsize length = input != NULL ? size - (gsize) (input + 2 - text) : 0;
  g_auto (GStrv) words = NULL;

  if (strlen (text) < size && input == NULL)
    return 0;
  if (input != NULL)
    *input = '\0';
  words = g_strsplit (g_strchomp (text), "\n", -1);
  if (!may_run (words))
    return 0;
  set_up ();
  put_input (input != NULL ? (const char *) data + size - length : "", length);
  run (words);
  clear_folder ();
  return 0;
}
