/* The member "shelf": what there is to build from.
 *
 * "shelf": [ { "name": "Off-cut", "kind": "board", "material": "beech", "length": 900, "width": 120, "thickness": 27,
 *              "count": 1, "avoid": "0..40" } ]
 *
 * It is not written where the shelf is empty.  What is not known of an item is kept by its place in the list. */
#include <glib/gi18n-lib.h>

#include "shelf_json.h"

static char *
path_of (guint place)
{
  g_autofree char *number = g_strdup_printf ("%u", place);

  return rw_unknown_path ("shelf", number, NULL);
}

static gboolean
read_item (RwProject *project, JsonNode *node, GError **error)
{
  guint place = project->shelf->items->len;
  g_autofree char *path = path_of (place);
  RwStockItem *item = rw_shelf_json_read (node, place + 1, error);

  if (item == NULL)
    return FALSE;
  g_ptr_array_add (project->shelf->items, item);
  rw_member_keep_others (project, json_node_get_object (node), path, rw_shelf_json_known);
  return TRUE;
}

gboolean
rw_member_read_shelf (RwProject *project, JsonNode *node, GError **error)
{
  JsonArray *list;

  if (!JSON_NODE_HOLDS_ARRAY (node))
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no list"), "shelf");
  list = json_node_get_array (node);
  if (json_array_get_length (list) > RW_SHELF_MAX)
    return rw_member_fail (error, RW_FILE_ERROR_TOO_BIG, N_("The list %s is too long"), "shelf");
  for (guint i = 0; i < json_array_get_length (list); i++)
    if (!read_item (project, json_array_get_element (list, i), error))
      return FALSE;
  return TRUE;
}

void
rw_member_write_shelf (RwJsonWriter *writer, const RwProject *project)
{
  const RwShelf *shelf = project->shelf;

  if (shelf->items->len == 0)
    return;
  rw_json_name (writer, "shelf");
  rw_json_begin (writer, '[');
  for (guint i = 0; i < shelf->items->len; i++)
    {
      g_autofree char *path = path_of (i);

      rw_json_next (writer);
      rw_shelf_json_begin (writer->out, g_ptr_array_index (shelf->items, i));
      rw_member_append_unknown (writer->out, project, path);
      g_string_append (writer->out, " }");
    }
  rw_json_end (writer, ']');
}
