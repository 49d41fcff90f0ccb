#include "shelf_file.h"

#include <errno.h>
#include <glib/gi18n-lib.h>
#include <string.h>

#include "json_scan.h"
#include "read_file.h"
#include "save.h"
#include "shelf_json.h"

#define SHELF_VERSION 1

char *
rw_shelf_path (void)
{
  return g_build_filename (g_get_user_data_dir (), "rimwright", "shelf.json", NULL);
}

char *
rw_shelf_to_text (const RwShelf *shelf)
{
  RwJsonWriter writer = rw_json_writer (g_string_new (NULL));

  rw_json_begin (&writer, '{');
  rw_json_name (&writer, "rimwright-shelf");
  g_string_append_printf (writer.out, "%d", SHELF_VERSION);
  rw_json_name (&writer, "shelf");
  rw_json_begin (&writer, '[');
  for (guint i = 0; i < shelf->items->len; i++)
    {
      rw_json_next (&writer);
      rw_shelf_json_begin (writer.out, g_ptr_array_index (shelf->items, i));
      g_string_append (writer.out, " }");
    }
  rw_json_end (&writer, ']');
  rw_json_end (&writer, '}');
  g_string_append_c (writer.out, '\n');
  return g_string_free (writer.out, FALSE);
}

static gboolean
fail (GError **error, RwFileError code, const char *sentence)
{
  g_set_error_literal (error, RW_FILE_ERROR, code, sentence);
  return FALSE;
}

static gboolean
read_items (RwShelf *shelf, JsonNode *root, GError **error)
{
  JsonObject *object = JSON_NODE_HOLDS_OBJECT (root) ? json_node_get_object (root) : NULL;
  JsonNode *version = object != NULL ? json_object_get_member (object, "rimwright-shelf") : NULL;
  JsonNode *list = object != NULL ? json_object_get_member (object, "shelf") : NULL;

  if (!rw_member_is_number (version) || list == NULL || !JSON_NODE_HOLDS_ARRAY (list))
    return fail (error, RW_FILE_ERROR_DAMAGED, _("This is no shelf"));
  if (json_node_get_double (version) > SHELF_VERSION)
    return fail (error, RW_FILE_ERROR_TOO_NEW, _("The shelf was written by a later version of this program"));
  JsonArray *items = json_node_get_array (list);
  if (json_array_get_length (items) > RW_SHELF_MAX)
    return fail (error, RW_FILE_ERROR_TOO_BIG, _("The shelf has too many rows"));
  for (guint i = 0; i < json_array_get_length (items); i++)
    {
      RwStockItem *item = rw_shelf_json_read (json_array_get_element (items, i), i + 1, error);

      if (item == NULL)
        return FALSE;
      g_ptr_array_add (shelf->items, item);
    }
  return TRUE;
}

RwShelf *
rw_shelf_from_text (const char *text, gsize length, GError **error)
{
  g_autoptr (JsonParser) parser = json_parser_new ();
  g_autoptr (RwShelf) shelf = rw_shelf_new ();

  if (!rw_json_scan (text, length, error) || !json_parser_load_from_data (parser, text, (gssize) length, error)
      || !read_items (shelf, json_parser_get_root (parser), error))
    return NULL;
  return g_steal_pointer (&shelf);
}

RwShelf *
rw_shelf_load (const char *path, GError **error)
{
  g_autoptr (GError) reason = NULL;
  g_autoptr (RwShelf) shelf = NULL;
  GString *text;

  if (!g_file_test (path, G_FILE_TEST_EXISTS))
    return rw_shelf_new ();
  text = rw_read_file (path, RW_JSON_MAX_BYTES, &reason);
  if (text == NULL)
    {
      g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS, _("The shelf can’t be read: %s"), reason->message);
      return NULL;
    }
  shelf = rw_shelf_from_text (text->str, text->len, error);
  g_string_free (text, TRUE);
  return g_steal_pointer (&shelf);
}

/* More than the most bytes are more than the most rows, which is said in the table's own words. */
RwShelf *
rw_shelf_load_csv (const char *path, RwUnits units, GPtrArray *faults, GError **error)
{
  GString *text = rw_read_file (path, RW_SHELF_CSV_MAX_BYTES, error);
  RwShelf *shelf;

  if (text == NULL)
    return NULL;
  shelf = rw_shelf_from_csv (text->str, text->len, units, faults, error);
  g_string_free (text, TRUE);
  return shelf;
}

gboolean
rw_shelf_save (const RwShelf *shelf, const char *path, GError **error)
{
  g_autofree char *folder = g_path_get_dirname (path), *text = rw_shelf_to_text (shelf);

  if (g_mkdir_with_parents (folder, 0700) == 0)
    return rw_save_version (path, text, strlen (text), error);
  g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS, _("The folder of the shelf can’t be made: %s"),
               g_strerror (errno));
  return FALSE;
}
