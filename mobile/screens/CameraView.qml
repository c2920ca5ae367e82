import QtQuick
import QtMultimedia
import "parts.js" as Parts

// The tablet's own camera, the one on its back where there are several. Loaded by its address where it is wanted
// (app/camera.h): the program starts without QtMultimedia and does without it.
Viewfinder {
    id: view

    readonly property real ratio: output.sourceRect.height > 0 ? output.sourceRect.width / output.sourceRect.height : 4 / 3

    there: devices.videoInputs.length > 0
    seeing: output.sourceRect.width > 0
    problem: camera.error === Camera.NoError ? "" : camera.errorString
    picture: output
    grain: Qt.size(output.sourceRect.width, output.sourceRect.height)

    MediaDevices {
        id: devices
    }

    CaptureSession {
        videoOutput: output
        camera: Camera {
            id: camera

            cameraDevice: Parts.first(devices.videoInputs, one => one.position === CameraDevice.BackFace, devices.defaultVideoInput)
            focusMode: Camera.FocusModeAuto
            active: view.running && view.there
        }
    }

    VideoOutput {
        id: output

        anchors.centerIn: parent
        width: Math.min(view.width, view.height * view.ratio)
        height: width / view.ratio
    }
}
