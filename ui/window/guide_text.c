#include "guide_text.h"

#include <gio/gio.h>
#include <string.h>

#include "draw/drawing.h"

#define FOLDER "/org/rimwright/Rimwright/"

static void
block_free (RwBlock *block)
{
  g_free (block->text);
  g_free (block);
}

/* Escaped for Pango, with what stands between double stars in bold. */
static char *
markup (const char *text)
{
  g_autofree char *escaped = g_markup_escape_text (text, -1);
  g_auto (GStrv) parts = g_strsplit (escaped, "**", -1);
  GString *out = g_string_new (parts[0]);

  for (int i = 1; parts[0] != NULL && parts[i] != NULL; i++)
    g_string_append_printf (out, "%s%s", i % 2 == 1 ? "<b>" : "</b>", parts[i]);
  return g_string_free (out, FALSE);
}

static void
add (GPtrArray *blocks, RwBlockKind kind, const char *text)
{
  RwBlock *block = g_new0 (RwBlock, 1);

  block->kind = kind;
  block->text = g_strdup (text);
  g_ptr_array_add (blocks, block);
}

/* "![caption](view:id)" */
static gboolean
add_picture (GPtrArray *blocks, const char *line)
{
  const char *middle = strstr (line, "](view:"), *end = middle != NULL ? strchr (middle, ')') : NULL;
  g_autofree char *caption = NULL, *id = NULL;

  if (!g_str_has_prefix (line, "![") || end == NULL)
    return FALSE;
  caption = g_strndup (line + 2, (gsize) (middle - line - 2));
  middle += strlen ("](view:");
  id = g_strndup (middle, (gsize) (end - middle));
  add (blocks, RW_BLOCK_PICTURE, caption);
  ((RwBlock *) g_ptr_array_index (blocks, blocks->len - 1))->view = rw_view_find (id);
  return TRUE;
}

/* "1. words": the number, and where the words begin; 0 where it is none. */
static int
item_number (const char *line, const char **words)
{
  char *end;
  gint64 number = g_ascii_strtoll (line, &end, 10);

  if (number < 1 || number > 99 || end == line || !g_str_has_prefix (end, ". "))
    return 0;
  *words = end + 2;
  return (int) number;
}

/* A line that begins a block of its own; FALSE where it goes on with the one before. */
static gboolean
begin_block (GPtrArray *blocks, const char *line)
{
  const char *words;
  int number;

  if (g_str_has_prefix (line, "# ") || g_str_has_prefix (line, "## "))
    add (blocks, RW_BLOCK_CHAPTER, strchr (line, ' ') + 1);
  else if (g_str_has_prefix (line, "- "))
    add (blocks, RW_BLOCK_ITEM, line + 2);
  else if ((number = item_number (line, &words)) > 0)
    {
      add (blocks, RW_BLOCK_ITEM, words);
      ((RwBlock *) g_ptr_array_index (blocks, blocks->len - 1))->number = number;
    }
  else
    return add_picture (blocks, line);
  return TRUE;
}

static void
go_on (RwBlock *block, const char *line)
{
  g_autofree char *before = block->text;

  block->text = g_strjoin (" ", before, line, NULL);
}

/* Marks may run over the end of a line, so they are read when all lines are there. */
static void
finish (gpointer data, gpointer user_data)
{
  RwBlock *block = data;
  g_autofree char *plain = block->text;

  block->text = block->kind == RW_BLOCK_CHAPTER ? g_strdup (plain) : markup (plain);
}

GPtrArray *
rw_guide_read (const char *text)
{
  GPtrArray *blocks = g_ptr_array_new_with_free_func ((GDestroyNotify) block_free);
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);
  gboolean open = FALSE; /* the last block goes on */

  for (int i = 0; lines[i] != NULL; i++)
    {
      char *line = g_strstrip (lines[i]);
      gboolean caution = g_str_has_prefix (line, "> ");

      if (*line == '\0')
        open = FALSE;
      else if (!caution && begin_block (blocks, line))
        open = TRUE;
      else if (open)
        go_on (g_ptr_array_index (blocks, blocks->len - 1), line + (caution ? 2 : 0));
      else
        {
          add (blocks, caution ? RW_BLOCK_CAUTION : RW_BLOCK_PARAGRAPH, line + (caution ? 2 : 0));
          open = TRUE;
        }
    }
  g_ptr_array_foreach (blocks, finish, NULL);
  return blocks;
}

char *
rw_guide_load (void)
{
  const char *const *languages = g_get_language_names ();

  for (int i = 0; languages[i] != NULL; i++)
    {
      g_autofree char *path = g_strdup_printf (FOLDER "guide.%s.md", languages[i]);
      g_autoptr (GBytes) bytes = g_resources_lookup_data (path, G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);

      if (bytes != NULL)
        return g_strndup (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));
    }
  g_autoptr (GBytes) english = g_resources_lookup_data (FOLDER "guide.en.md", G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
  return g_strndup (g_bytes_get_data (english, NULL), g_bytes_get_size (english));
}
