/* Project files: whatever the bytes, they are read or refused in one line; what is read is written and read
 * back the same, can be worked out, and makes a list in strict JSON. */
#include "fuzz.h"

#include <string.h>

#include "io/json_scan.h"
#include "io/list_file.h"
#include "io/project_file.h"

static void
check_refusal (const GError *error)
{
  g_assert_nonnull (error);
  g_assert_true (error->domain == RW_FILE_ERROR);
  g_assert_true (error->message[0] != '\0' && strchr (error->message, '\n') == NULL);
  g_assert_true (g_utf8_validate (error->message, -1, NULL));
}

static void
check_project (const RwProject *project)
{
  g_autofree char *text = rw_project_to_text (project), *again = NULL, *list = NULL;
  g_autoptr (GError) error = NULL;
  g_autoptr (RwProject) back = rw_project_from_text (text, -1, &error);
  g_autoptr (RwAnswer) answer = NULL;

  g_assert_no_error (error);
  again = rw_project_to_text (back);
  g_assert_true (rw_project_equal (project, back));
  g_assert_true (g_str_equal (text, again));

  answer = rw_answer_new (project);
  list = rw_list_write (project, answer, RW_LIST_JSON, RW_UNITS_MM);
  g_assert_true (rw_json_scan (list, strlen (list), &error));
}

int
LLVMFuzzerTestOneInput (const guint8 *data, size_t size)
{
  /* A copy of exactly this size, so that reading past its end is found. */
  g_autofree char *text = g_memdup2 (data, MAX (size, 1));
  g_autoptr (GError) error = NULL;
  g_autoptr (RwProject) project = rw_project_from_text (text, (gssize) size, &error);

  if (project == NULL)
    check_refusal (error);
  else
    check_project (project);
  return 0;
}
