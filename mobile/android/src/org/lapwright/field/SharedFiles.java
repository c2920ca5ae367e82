package org.lapwright.field;

import android.content.ActivityNotFoundException;
import android.content.ContentProvider;
import android.content.ContentValues;
import android.content.Context;
import android.content.Intent;
import android.database.Cursor;
import android.database.MatrixCursor;
import android.net.Uri;
import android.os.ParcelFileDescriptor;
import android.provider.OpenableColumns;
import java.io.File;
import java.io.FileNotFoundException;

/** Lends one file to the program that a person chose on the share sheet: to read, and nothing else of ours. */
public class SharedFiles extends ContentProvider {
    private static final String AUTHORITY = "org.lapwright.field.files";

    /** Where files lie that may be lent; the system may clear it. */
    public static String folder(Context context) {
        File folder = new File(context.getCacheDir(), "shared");
        folder.mkdirs();
        return folder.getAbsolutePath();
    }

    public static boolean share(Context context, String name, String type) {
        Uri address = new Uri.Builder().scheme("content").authority(AUTHORITY).appendPath(name).build();
        Intent send = new Intent(Intent.ACTION_SEND);
        send.setType(type);
        send.putExtra(Intent.EXTRA_STREAM, address);
        send.setClipData(android.content.ClipData.newRawUri(name, address));
        send.addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION);
        Intent chosen = Intent.createChooser(send, name);
        chosen.addFlags(Intent.FLAG_ACTIVITY_NEW_TASK | Intent.FLAG_GRANT_READ_URI_PERMISSION);
        try {
            context.startActivity(chosen);
            return true;
        } catch (ActivityNotFoundException nobody) {
            return false;
        }
    }

    /** Only a plain name inside the folder: no address leads out of it. */
    private File file(Uri address) throws FileNotFoundException {
        String name = address.getLastPathSegment();
        File file = new File(folder(getContext()), name == null ? "" : new File(name).getName());
        if (!file.isFile()) throw new FileNotFoundException(address.toString());
        return file;
    }

    @Override
    public ParcelFileDescriptor openFile(Uri address, String mode) throws FileNotFoundException {
        return ParcelFileDescriptor.open(file(address), ParcelFileDescriptor.MODE_READ_ONLY);
    }

    @Override
    public Cursor query(Uri address, String[] columns, String where, String[] values, String order) {
        try {
            File file = file(address);
            MatrixCursor row = new MatrixCursor(new String[] {OpenableColumns.DISPLAY_NAME, OpenableColumns.SIZE});
            row.addRow(new Object[] {file.getName(), file.length()});
            return row;
        } catch (FileNotFoundException gone) {
            return null;
        }
    }

    @Override
    public String getType(Uri address) {
        String name = address.getLastPathSegment();
        return name != null && name.endsWith(".zip") ? "application/zip" : "application/json";
    }

    @Override
    public boolean onCreate() {
        return true;
    }

    @Override
    public Uri insert(Uri address, ContentValues values) {
        throw new UnsupportedOperationException("files are lent to be read");
    }

    @Override
    public int delete(Uri address, String where, String[] values) {
        throw new UnsupportedOperationException("files are lent to be read");
    }

    @Override
    public int update(Uri address, ContentValues change, String where, String[] values) {
        throw new UnsupportedOperationException("files are lent to be read");
    }
}
